export const ROLES = ['director', 'bookkeeper', 'announcer'] as const;
export type Role = (typeof ROLES)[number];

/** Which role may use which right. A right that stands in no row belongs to nobody. */
export const ROLE_RIGHTS = {
  'be here': ['director', 'bookkeeper', 'announcer'],
  'see the season': ['director', 'bookkeeper', 'announcer'],
  'change the season': ['director'],
  'import the season': ['director'],
  'see students': ['director', 'announcer'],
  'change students': ['director'],
  'see contracts': ['director', 'bookkeeper'],
  'change contracts': ['director'],
  'sign contracts': ['director'],
  'make offers': ['director'],
  'see copy': ['director', 'bookkeeper', 'announcer'],
  'change copy': ['director'],
  'give out links': ['director'],
  'see packets': ['director', 'announcer'],
  'issue packets': ['director', 'announcer'],
  'plan placements': ['director'],
  'log a night': ['director', 'announcer'],
  'sign off a night': ['director', 'announcer'],
  'amend a night': ['director'],
  'see money': ['director', 'bookkeeper'],
  'issue statements': ['director'],
  'bill': ['director', 'bookkeeper'],
  'record payments': ['director', 'bookkeeper'],
  'take receipts': ['director', 'bookkeeper', 'announcer'],
  'approve write-offs': ['director'],
  'export the journal': ['director', 'bookkeeper'],
  'send letters': ['director', 'bookkeeper'],
  'close a month': ['bookkeeper'],
  'see the journal': ['director', 'bookkeeper'],
  'override a refusal': ['director'],
  'see people': ['director'],
  'change people': ['director'],
  'change the department': ['director'],
  'see the audit': ['director', 'bookkeeper'],
} as const satisfies Record<string, readonly Role[]>;

export type Right = keyof typeof ROLE_RIGHTS;

/** Whether a person who holds these roles in a department may use a right there. */
export function mayUse(roles: readonly Role[], right: Right): boolean {
  return roles.some((role) => (ROLE_RIGHTS[right] as readonly Role[]).includes(role));
}

/** The rights of a person, for the menu. */
export function rightsOf(roles: readonly Role[]): Right[] {
  return (Object.keys(ROLE_RIGHTS) as Right[]).filter((right) => mayUse(roles, right));
}

/**
 * Why a change of someone's roles is refused: a department always keeps one director, or nobody could
 * let anybody in again.
 *
 * @param otherDirectors how many other people are director there
 */
export function whyNotChangeRoles(
  before: readonly Role[],
  after: readonly Role[],
  otherDirectors: number,
): 'last-director' | null {
  const stepsDown = before.includes('director') && !after.includes('director');
  return stepsDown && otherDirectors === 0 ? 'last-director' : null;
}
