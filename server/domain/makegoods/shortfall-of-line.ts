import type { LinePosition, SlotPosition } from '../sponsorship/position.ts';
import { readsOfSlot, removedFrom } from '../sponsorship/slot-reads.ts';

/** A game that can still carry reads of one commitment as it was promised. */
export interface RoomLeft {
  readonly gameId: string;
  /** null where it has no night yet */
  readonly nightId: string | null;
  /** reads of the commitment: those that have their place there, and free places of its windows */
  readonly places: number;
}

/** Where the reads of a commitment stand that may be beyond giving. All in reads. */
export interface SlotShortfall {
  /** the game or night of a commitment that is counted by it, else null */
  readonly slotId: string | null;
  readonly owed: number;
  /** owed, with a replacement that is agreed and not given yet */
  readonly awaiting: number;
  /** owed, nothing agreed for them, and no game is left that could carry them as promised */
  readonly shortfall: number;
}

/**
 * The reads that can no longer be given as promised: those still owed for which the games left have no room. Counted over the
 * term, any game left may carry them; counted by the game or night, only that one. On occurrence what was guaranteed can be
 * read as long as a game is left; a mention that was missed is beyond giving at once where there is no most, because a later
 * shot only owes a mention of its own. Each commitment is looked at alone: whether all of them fit is the planner's to say.
 *
 * @param left the games that are not over, with the room each has for this commitment
 * @source common practice, no source
 */
export function shortfallOfLine(line: LinePosition, left: readonly RoomLeft[]): SlotShortfall[] {
  if (line.terms.kind !== 'reads') return [];
  const { counting } = line.terms;
  return line.slots.map((slot) => {
    const { owed } = readsOfSlot(line, slot);
    const awaiting = Math.min(owed, awaitingIn(slot));
    const open = owed - awaiting;
    const shortfall = counting === 'onOccurrence' ? beyondMentioning(slot, open, left.length > 0) : Math.max(0, open - roomFor(slot, left));
    return { slotId: slot.gameId ?? null, owed, awaiting, shortfall };
  });
}

/** Missed reads for which others were agreed that are still to come. */
export function awaitingIn(slot: Pick<SlotPosition, 'makegoods'>): number {
  return slot.makegoods.reduce((sum, makegood) => sum + makegood.missed - makegood.settled, 0);
}

function roomFor({ gameId }: SlotPosition, left: readonly RoomLeft[]): number {
  const games = gameId === undefined ? left : left.filter((game) => game.gameId === gameId || game.nightId === gameId);
  return games.reduce((sum, game) => sum + game.places, 0);
}

function beyondMentioning(slot: SlotPosition, open: number, isGameLeft: boolean): number {
  if (!isGameLeft) return open;
  if (slot.atMost !== undefined) return 0;
  const settled = slot.counted + removedFrom(slot) - slot.carriedIn + slot.makegoods.reduce((sum, makegood) => sum + makegood.missed, 0);
  return Math.max(0, Math.min(open, slot.occurrences - settled));
}
