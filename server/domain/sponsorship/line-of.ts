import { refuse } from '../refusals.ts';
import type { LinePosition, Position, SlotPosition } from './position.ts';
import { readsOfSlot } from './slot-reads.ts';

/** @throws Refused `unknown-line` */
export function lineOf(position: Position, lineId: string): LinePosition {
  return position.lines.find((line) => line.terms.lineId === lineId) ?? refuse('unknown-line', { lineId });
}

/** Whether the line keeps its count game by game (or night by night). */
export function countsByGame(line: LinePosition): boolean {
  return line.terms.kind === 'reads' && (line.terms.counting === 'perGame' || line.terms.counting === 'perNight');
}

export function emptySlot(promised: number, gameId?: string): SlotPosition {
  const nothing = { occurrences: 0, counted: 0, makegoods: [], credited: 0, released: 0, forfeited: 0, carriedOut: 0, carriedIn: 0 };
  return { ...(gameId === undefined ? {} : { gameId }), promised, ...nothing };
}

/**
 * The counts a happening belongs to. A game that the commitment does not name gets a place of its own, with nothing
 * promised in it, so what is read there is extra.
 *
 * @throws Refused `game-needed` when the line counts by game and none is named
 */
export function slotOf(line: LinePosition, gameId: string | undefined): SlotPosition {
  const name = countsByGame(line) ? (gameId ?? refuse('game-needed')) : undefined;
  const found = line.slots.find((slot) => slot.gameId === name);
  if (found) return found;
  const made = emptySlot(0, name);
  line.slots.push(made);
  return made;
}

/** @throws Refused `count-not-above-zero` */
export function checkCount(count: number): void {
  if (!Number.isSafeInteger(count) || count <= 0) refuse('count-not-above-zero');
}

/** @throws Refused `amount-not-above-zero` */
export function checkAmount(amountCents: number): void {
  if (!Number.isSafeInteger(amountCents) || amountCents <= 0) refuse('amount-not-above-zero');
}

/** @throws Refused `more-than-owed` */
export function checkOwed(line: LinePosition, slot: SlotPosition, count: number): void {
  checkCount(count);
  const { owed } = readsOfSlot(line, slot);
  if (count > owed) refuse('more-than-owed', { owed, line: line.terms.name });
}
