import { hashPassword } from '../server/access/password.ts';
import { Membership } from '../server/access/membership.entity.ts';
import type { Role } from '../server/domain/access/rights.ts';
import { newId } from '../server/platform/database/ids.ts';
import type { UnitOfWork } from '../server/platform/database/unit-of-work.ts';
import type { Scope } from '../server/platform/database/scope.ts';

export const DEMO_PASSPHRASE = 'kestrels over the ridge';
export const ZONE = 'America/Denver';

interface DemoPerson {
  name: string;
  sayAs: string | null;
  email: string;
  roles: Role[];
}

const DIRECTOR: DemoPerson = { name: 'Ottilie Brandvold', sayAs: 'oh-TILL-ee BRAND-vold', email: 'director@tamarack.example', roles: ['director'] };
const BOOKKEEPER: DemoPerson = { name: 'Perpetua Lindqvist', sayAs: null, email: 'bookkeeper@tamarack.example', roles: ['bookkeeper'] };
export const ANNOUNCER: DemoPerson = { name: 'Casimir Thornquist', sayAs: 'KAZ-uh-meer THORN-kwist', email: 'announcer@tamarack.example', roles: ['announcer'] };

const PEOPLE: readonly DemoPerson[] = [
  DIRECTOR,
  BOOKKEEPER,
  ANNOUNCER,
  { name: 'Ignatius Marrow', sayAs: 'ig-NAY-shus MAR-oh', email: 'everything@tamarack.example', roles: ['director', 'bookkeeper', 'announcer'] },
];

export type Teller = 'director' | 'bookkeeper' | 'announcer';

/** The department and its people, before anybody can be asked who they are. Answers in whose name the story is told. */
export async function openDepartment(work: UnitOfWork): Promise<Record<Teller, Scope>> {
  const passwordHash = await hashPassword(DEMO_PASSPHRASE);
  const departmentId = newId();
  const ids = new Map(PEOPLE.map((person) => [person, newId()]));
  const scopeOf = (person: DemoPerson): Scope => ({ departmentId, personId: ids.get(person)! });
  await work.runAs(scopeOf(DIRECTOR), async () => {
    await work.sqlEverywhere('insert into department (id, name, zone, settings) values ($1, $2, $3, $4)', [
      departmentId,
      'Tamarack Ridge Athletics',
      ZONE,
      JSON.stringify({ prayerOn: false, foulCountsRead: false, bankShotMention: 'nextWindow', cutShortCounts: true }),
    ]);
    for (const [person, personId] of ids) {
      await work.sqlEverywhere('insert into person (id, email, name, say_as, password_hash) values ($1, $2, $3, $4, $5)', [
        personId,
        person.email,
        person.name,
        person.sayAs,
        passwordHash,
      ]);
      await work.insert(Membership, { personId, roles: person.roles });
    }
  });
  return { director: scopeOf(DIRECTOR), bookkeeper: scopeOf(BOOKKEEPER), announcer: scopeOf(ANNOUNCER) };
}

/** What the start of Rafterline shows: one JSON object a line. */
export function signInLines(): string[] {
  return PEOPLE.map(({ email, name, roles }) => JSON.stringify({ email, password: DEMO_PASSPHRASE, name, roles: roles.length === 3 ? ['everything'] : roles }));
}
