import { NOT_READ_REASONS } from '../../domain/night/log-entry.ts';
import { REASON_WORDS } from '../../domain/night/reason-words.ts';

/** What the books say of reads that nobody logged. */
const OF_THE_BOOKS = ['the game was called off', 'it was never planned', 'it did not happen as often as was promised', 'no game is left that could carry it'];

const TOLD: ReadonlySet<string> = new Set([...NOT_READ_REASONS.map((reason) => REASON_WORDS[reason]), ...OF_THE_BOOKS]);

/** A reason as a sponsor may read it: one of the lists. What somebody typed at the table may name a student and stays in the office. */
export const reasonOnPage = (why: string | null): string | null => (why !== null && TOLD.has(why) ? why : null);
