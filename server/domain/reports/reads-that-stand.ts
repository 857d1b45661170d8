import { daysOf } from '../billing/without-later.ts';
import type { HappenedOn } from '../billing/without-later.ts';
import type { Day } from '../day.ts';
import { countsByGame, lineOf } from '../sponsorship/line-of.ts';
import type { LinePosition, MakegoodPosition, Position } from '../sponsorship/position.ts';
import { readsOfSlot } from '../sponsorship/slot-reads.ts';

/** One read that counts, as the ledger has it. */
export interface ReadThatStands {
  /** the log entry */
  readonly readId: string;
  readonly lineId: string;
  /** one entry can count as several reads: its first is 0 */
  readonly part: number;
  readonly what: 'given' | 'extra' | 'makegood';
  readonly makegoodId: string | null;
  /** of a makegood: which of its replacements this is, 1 and up */
  readonly replacement: number | null;
  /** promised reads that it settles: 1 for a read given, 0 for an extra one; of N missed for M replacements what the rule says */
  readonly settles: number;
  /** the day of its night; null only where the ledger does not say */
  readonly on: Day | null;
}

/**
 * Every read that counts, in the order of the ledger. Of one commitment (or one game of it, where it is counted by the
 * game) the last ones beyond the promise are extra: what is taken back makes room for the one that was extra before.
 *
 * @param happened all that happened to the term, in its order
 * @throws Refused `unknown-line` when a read names a line that the position does not have
 */
export function readsThatStand(position: Position, happened: readonly HappenedOn[]): ReadThatStands[] {
  const days = daysOf(happened);
  const replacements = new Map<string, number>();
  const extra = extraBySlot(position);
  return Object.entries(position.reads)
    .flatMap(([readId, { lineId, gameId, times, makegoodId }]): (ReadThatStands & { slot: string })[] => {
      const line = lineOf(position, lineId);
      const read = { readId, lineId, on: days.get(readId) ?? null, slot: slotKey(line, gameId) };
      if (makegoodId === undefined) {
        return Array.from({ length: times }, (_, part) => ({ ...read, part, what: 'given', makegoodId: null, replacement: null, settles: 1 }));
      }
      const replacement = (replacements.get(makegoodId) ?? 0) + 1;
      replacements.set(makegoodId, replacement);
      return [{ ...read, part: 0, what: 'makegood', makegoodId, replacement, settles: settledWith(makegoodIn(line, makegoodId), replacement) }];
    })
    .toReversed()
    .map(({ slot, ...read }): ReadThatStands => {
      const left = read.what === 'given' ? (extra.get(slot) ?? 0) : 0;
      if (left === 0) return read;
      extra.set(slot, left - 1);
      return { ...read, what: 'extra', settles: 0 };
    })
    .toReversed();
}

const slotKey = (line: LinePosition, gameId: string | undefined): string => `${line.terms.lineId} ${countsByGame(line) ? (gameId ?? '') : ''}`;

function extraBySlot(position: Position): Map<string, number> {
  return new Map(position.lines.flatMap((line) => line.slots.map((slot) => [slotKey(line, slot.gameId), readsOfSlot(line, slot).extra] as const)));
}

function makegoodIn(line: LinePosition, makegoodId: string): MakegoodPosition | undefined {
  return line.slots.flatMap((slot) => slot.makegoods).find((one) => one.makegoodId === makegoodId);
}

/** What the n-th replacement settles, never more than was settled in all. */
function settledWith(makegood: MakegoodPosition | undefined, replacement: number): number {
  if (!makegood) return 0;
  const by = (given: number): number => Math.min(makegood.settled, Math.floor((given * makegood.missed) / makegood.replacements));
  return by(replacement) - by(replacement - 1);
}

/**
 * The missed read, 1 and up, that a replacement stands for: missed read i of N is settled by replacement ⌈i × M / N⌉ of M,
 * and one that settles none by itself stands for the same read as the next one that does.
 */
export function missedReadOf(replacement: number, missed: number, replacements: number): number {
  return Math.min(missed, Math.floor(((replacement - 1) * missed) / replacements) + 1);
}
