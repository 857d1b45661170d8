/** Roles of a night that a student may hold: a feed says the role and no name, whoever holds it. */
const MAY_BE_A_STUDENT: ReadonlySet<string> = new Set(['spotter', 'singer', 'colourGuard', 'honouree', 'presenter', 'other']);

const ROLE_NAMES: Readonly<Record<string, string>> = {
  announcer: 'Announcer', spotter: 'Spotter', scorer: 'Official scorer', clock: 'Clock', singer: 'Singer', colourGuard: 'Color guard',
  presenter: 'Presenter', honouree: 'Honoree', official: 'Official', other: 'Other',
};

export interface NeededPerson {
  role: string;
  name: string;
  /** somebody with an account of the department, who is no student */
  hasAccount: boolean;
  /** on the wall clock, such as "5:45 PM"; null where nobody said */
  arrives: string | null;
}

/**
 * Who is needed on a night, one line each, for a calendar that lies on phones and servers of others. A name stands only where it is surely
 * an adult's: of somebody with an account, or of an official, and never in a role that a student may hold.
 *
 * @source the department's caution about students (FERPA, directory information); the choice of roles is common practice, no source
 */
export function neededLines(people: readonly NeededPerson[]): string[] {
  if (people.length === 0) return ['Nobody is named for this night yet.'];
  return people.map(({ role, name, hasAccount, arrives }) => {
    const isNamed = !MAY_BE_A_STUDENT.has(role) && (hasAccount || role === 'official');
    return `${ROLE_NAMES[role] ?? 'Other'}${isNamed ? `: ${name}` : ''}${arrives === null ? '' : `, arrives ${arrives}`}`;
  });
}
