/** What is said of somebody at the table who has no account: a table's link may be a student's. */
export const AT_THE_TABLE = 'at the table';

const MOST_LETTERS = 3;

/** The initials of a person's account, "B. O."; a name is never printed on what leaves the house. */
export function initialsOfPerson(name: string): string {
  const letters = name.trim().split(/[\s-]+/u).flatMap((word) => /\p{L}/u.exec(word)?.[0] ?? []).slice(0, MOST_LETTERS);
  return letters.length === 0 ? AT_THE_TABLE : letters.map((letter) => `${letter.toLocaleUpperCase('en-US')}.`).join(' ');
}
