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

export const DIRECTOR: DemoPerson = { name: 'Ottilie Brandvold', sayAs: 'oh-TILL-ee BRAND-vold', email: 'director@tamarack.example', roles: ['director'] };
export const ANNOUNCER: DemoPerson = { name: 'Casimir Thornquist', sayAs: 'KAZ-uh-meer THORN-kwist', email: 'announcer@tamarack.example', roles: ['announcer'] };

const PEOPLE: readonly DemoPerson[] = [
  DIRECTOR,
  { name: 'Perpetua Lindqvist', sayAs: null, email: 'bookkeeper@tamarack.example', roles: ['bookkeeper'] },
  ANNOUNCER,
  { name: 'Ignatius Marrow', sayAs: 'ig-NAY-shus MAR-oh', email: 'everything@tamarack.example', roles: ['director', 'bookkeeper', 'announcer'] },
];

/** The department and its people, before anybody can be asked who they are. Answers the director's scope. */
export async function openDepartment(work: UnitOfWork): Promise<Scope> {
  const passwordHash = await hashPassword(DEMO_PASSPHRASE);
  const scope = { departmentId: newId(), personId: newId() };
  await work.runAs(scope, async () => {
    await work.sqlEverywhere('insert into department (id, name, zone, settings) values ($1, $2, $3, $4)', [
      scope.departmentId,
      'Tamarack Ridge Athletics',
      ZONE,
      JSON.stringify({ prayerOn: false, foulCountsRead: false, bankShotMention: 'nextWindow', cutShortCounts: true }),
    ]);
    for (const person of PEOPLE) {
      const personId = person === DIRECTOR ? scope.personId : newId();
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
  return scope;
}

/** What the start of Rafterline shows: one JSON object a line. */
export function signInLines(): string[] {
  return PEOPLE.map(({ email, name, roles }) => JSON.stringify({ email, password: DEMO_PASSPHRASE, name, roles: roles.length === 3 ? ['everything'] : roles }));
}
