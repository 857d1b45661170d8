import { NOT_READ_REASONS } from '../night/log-entry.ts';
import { REASON_WORDS } from '../night/reason-words.ts';

/** What the books say of reads that nobody logged, or that were taken back. */
const OF_THE_BOOKS = [
  'nothing in the log', 'taken back after the night was signed off', 'not counted after all', 'the game was called off', 'it was never planned', 'held, and never read',
  'it did not happen as often as was promised', 'no game is left that could carry it',
];

const TOLD: ReadonlySet<string> = new Set([...NOT_READ_REASONS.map((reason) => REASON_WORDS[reason]), ...OF_THE_BOOKS]);

/** The words of the list, and what somebody added to them. */
const ADDED = /^([^,]+), /;

/**
 * A reason as a sponsor may read it: one of the lists. What somebody typed at the table may name a student and stays in the office.
 *
 * @param why a reason in words, as the school reads it
 * @returns null where nothing of it may be told
 */
export function reasonForSponsor(why: string | null): string | null {
  if (why === null || TOLD.has(why)) return why;
  const listed = ADDED.exec(why)?.[1];
  return listed !== undefined && TOLD.has(listed) ? listed : null;
}
