import { openCentsOf } from '../../sponsorship/line-values.ts';
import type { LinePosition, Position } from '../../sponsorship/position.ts';
import { readsOfLine, readsOfSlot } from '../../sponsorship/slot-reads.ts';

/** What a move of a game did to the reads of one line, and their value. Counts and cents are zero or more. */
export interface MovedLine {
  readonly lineId: string;
  readonly name: string;
  /** given back to the sponsor, with what they were worth */
  readonly credited: number;
  readonly creditedCents: number;
  /** no longer owed; what they were worth moves on to the reads still open */
  readonly released: number;
  /** promised anew, for a game or night that the line did not count over before */
  readonly added: number;
  /** owed for this game, before as after: they go where it goes, or wait with it */
  readonly kept: number;
}

/**
 * The lines of a term that a move touches: what became of their reads, and what this game still owes them.
 *
 * @param before where the term stood before the move, by its happenings
 * @param after the same after it
 * @param keys the game's id and those of its nights, by which lines counted per game or per night know it
 */
export function movedLines(before: Position, after: Position, keys: ReadonlySet<string>): MovedLine[] {
  return after.lines.flatMap((line) => {
    const was = before.lines.find((one) => one.terms.lineId === line.terms.lineId);
    if (!was || line.terms.kind !== 'reads') return [];
    const moved = movedLine(was, line, keys);
    return moved.credited + moved.released + moved.added + moved.kept > 0 ? [moved] : [];
  });
}

function movedLine(was: LinePosition, line: LinePosition, keys: ReadonlySet<string>): MovedLine {
  const [reads, now] = [readsOfLine(was), readsOfLine(line)];
  const kept = line.slots.filter((slot) => slot.gameId !== undefined && keys.has(slot.gameId)).reduce((sum, slot) => sum + readsOfSlot(line, slot).owed, 0);
  const credited = now.credited - reads.credited;
  return {
    lineId: line.terms.lineId,
    name: line.terms.name,
    credited,
    creditedCents: credited > 0 ? openCentsOf(was) - openCentsOf(line) : 0,
    released: now.released - reads.released,
    added: now.promised - reads.promised,
    kept,
  };
}
