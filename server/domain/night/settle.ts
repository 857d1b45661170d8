import type { Decisions } from './count-outcome.ts';
import { happeningOf } from './log-entry.ts';
import type { LogEntry } from './log-entry.ts';
import { happeningIdsOf } from './mentions-to-count.ts';
import type { Settled } from './occurrences.ts';
import { standing } from './take-back.ts';

/** What a person can say of an entry: of a happening the first two, of a read or a mention the last two. */
export const SETTLED_ANSWERS = ['sameAs', 'different', 'counts', 'doesNotCount'] as const;
export type SettledAnswer = (typeof SETTLED_ANSWERS)[number];

/** One answer as it is kept; the last one said of an entry holds. */
export interface Settlement {
  readonly entryId: string;
  readonly answer: SettledAnswer;
  readonly sameAsEntryId: string | null;
}

export type SettleRefusal = 'unknown-entry' | 'settling-no-happening' | 'settling-no-read' | 'settling-what-is-settled' | 'same-as-nothing' | 'same-as-itself' | 'same-as-unlike';

/**
 * What persons have settled of a night, in the order in which they did. An entry that is the same as one that is the
 * same as a third is the same as the third.
 */
export function settledOf(settlements: readonly Settlement[]): { settled: Settled; decisions: Decisions } {
  const last = new Map(settlements.map((one) => [one.entryId, one]));
  const settled = new Map<string, { readonly sameAs: string } | 'different'>();
  const decisions = new Map<string, 'counts' | 'doesNotCount'>();
  for (const { entryId, answer } of last.values()) {
    if (answer === 'counts' || answer === 'doesNotCount') decisions.set(entryId, answer);
    else settled.set(entryId, answer === 'different' ? 'different' : { sameAs: firstOf(entryId, last) });
  }
  return { settled, decisions };
}

function firstOf(entryId: string, last: ReadonlyMap<string, Settlement>): string {
  let at = entryId;
  for (let step = 0; step <= last.size; step += 1) {
    const one = last.get(at);
    if (one?.answer !== 'sameAs' || one.sameAsEntryId === null) return at;
    at = one.sameAsEntryId;
  }
  return at;
}

/** Whether a person's word decides: cut short, or a mention that answers nothing which stands in the log by its name. */
function isOpen(entry: LogEntry, entries: readonly LogEntry[]): boolean {
  if (entry.outcome === 'cutShort') return true;
  const named = happeningIdsOf(entry);
  return entry.kind === 'mention' && entry.outcome === 'given' && !standing(entries).some((one) => one.kind === 'happening' && named.includes(one.id));
}

/**
 * Why an answer cannot be kept, or null.
 *
 * @param entries the log of the night
 * @param settlements what was settled before
 */
export function whyNotSettle(asked: Settlement, entries: readonly LogEntry[], settlements: readonly Settlement[]): SettleRefusal | null {
  const entry = entries.find((one) => one.id === asked.entryId);
  if (!entry) return 'unknown-entry';
  if (asked.answer === 'counts' || asked.answer === 'doesNotCount') {
    if (entry.kind !== 'read' && entry.kind !== 'mention') return 'settling-no-read';
    return isOpen(entry, entries) ? null : 'settling-what-is-settled';
  }
  if (entry.kind !== 'happening') return 'settling-no-happening';
  if (asked.answer === 'different') return null;
  if (asked.sameAsEntryId === null) return 'same-as-nothing';
  const other = entries.find((one) => one.id === asked.sameAsEntryId);
  if (!other) return 'unknown-entry';
  if (other.kind !== 'happening' || other.gameId !== entry.gameId || happeningOf(other) !== happeningOf(entry)) return 'same-as-unlike';
  const last = new Map(settlements.map((one) => [one.entryId, one]));
  return firstOf(other.id, last) === entry.id ? 'same-as-itself' : null;
}
