import { refuse } from '../refusals.ts';
import { amountsOf } from './contract-amounts.ts';
import { fallWithPrice, lowerPrice, takeFromDocuments } from './credit-price.ts';
import type { HappeningOf } from './happening.ts';
import { fitValues, isPricedByRead, resplitOpen, sumOf, takeFromEnd } from './line-values.ts';
import { checkCount, checkOwed, countsByGame, lineOf, slotOf } from './line-of.ts';
import { newDocument } from './apply-signing.ts';
import type { LinePosition, Position, SlotPosition } from './position.ts';
import { ordinalsOf, readsOfSlot, settledOrdinals } from './slot-reads.ts';

export function creditReads(position: Position, happening: HappeningOf<'readsCredited'>): void {
  const line = lineOf(position, happening.lineId);
  const slot = slotOf(line, happening.gameId);
  checkOwed(line, slot, happening.count);
  lowerPrice(position, happening, () => creditSlot(line, slot, happening.count));
}

function creditSlot(line: LinePosition, slot: SlotPosition, count: number): void {
  takeFromEnd(line, count);
  slot.credited += count;
}

export function releaseReads(position: Position, { lineId, gameId, count }: HappeningOf<'readsReleased'>): void {
  const line = lineOf(position, lineId);
  const slot = slotOf(line, gameId);
  checkOwed(line, slot, count);
  releaseSlot(position, line, slot, count);
}

/** The value moves on to the reads still open on the line; where none is open it is kept without a read. */
function releaseSlot(position: Position, line: LinePosition, slot: SlotPosition, count: number): void {
  const valueCents = sumOf(takeFromEnd(line, count));
  slot.released += count;
  if (isPricedByRead(line.terms)) return;
  const settled = settledOrdinals(line);
  if (ordinalsOf(line) > settled) resplitOpen(line, settled, valueCents);
  else position.keptCents += valueCents;
}

export function forfeitReads(position: Position, { lineId, gameId, count }: HappeningOf<'readsForfeited'>): void {
  const line = lineOf(position, lineId);
  const slot = slotOf(line, gameId);
  checkOwed(line, slot, count);
  position.keptCents += sumOf(takeFromEnd(line, count));
  slot.forfeited += count;
}

/** Reads counted for the cancelled game are credited or released as the contract says; others stay owed. */
export function cancelGame(position: Position, happening: HappeningOf<'gameCancelled'>): void {
  lowerPrice(position, happening, () => {
    for (const line of position.lines.filter(countsByGame)) {
      const slot = line.slots.find((one) => one.gameId === happening.gameId);
      const owed = slot ? readsOfSlot(line, slot).owed : 0;
      if (!slot || owed === 0) continue;
      if (position.terms.cancelledGame === 'credit') creditSlot(line, slot, owed);
      else releaseSlot(position, line, slot, owed);
    }
  });
}

/** At a fixed price more reads are owed for the same money: the open values are shared anew. */
export function addGame(position: Position, { gameId, lines }: HappeningOf<'gameAdded'>): void {
  for (const { lineId, reads } of lines) {
    checkCount(reads);
    const line = lineOf(position, lineId);
    if (!countsByGame(line)) refuse('not-counted-by-game');
    const settled = settledOrdinals(line);
    slotOf(line, gameId).promised += reads;
    if (!isPricedByRead(line.terms)) resplitOpen(line, settled, 0);
  }
}

/** Reads leave for the next term with their values; the part that is billed leaves the invoices with its tax. */
export function carryOut(position: Position, happening: HappeningOf<'carriedOut'>): CarriedFigures {
  const { carryId, lineId, gameId, count } = happening;
  const line = lineOf(position, lineId);
  const slot = slotOf(line, gameId);
  checkOwed(line, slot, count);
  const before = amountsOf(position);
  const valuesCents = takeFromEnd(line, count);
  slot.carriedOut += count;
  fallWithPrice(position, before.priceCents, happening);
  const billedCents = Math.min(position.billedCents, Math.max(0, sumOf(valuesCents) - Math.max(0, before.toBillCents)));
  const parts = takeFromDocuments(position, billedCents, undefined, (document, part, tax) => {
    document.carriedCents += part;
    document.creditedTaxCents += tax;
  });
  position.billedCents -= billedCents;
  position.carries.push({ carryId, billedCents });
  return { valuesCents, billedCents, taxCents: parts.reduce((sum, part) => sum + part.taxCents, 0) };
}

/** What a carry-over takes along, in cents. */
export interface CarriedFigures {
  valuesCents: number[];
  billedCents: number;
  taxCents: number;
}

export function carryIn(position: Position, happening: HappeningOf<'carriedIn'>): void {
  const { carryId, lineId, gameId, valuesCents, count, billedCents, taxCents } = happening;
  checkCount(count);
  const line = lineOf(position, lineId);
  if (isPricedByRead(line.terms) && sumOf(valuesCents) > 0) refuse('price-is-per-read');
  slotOf(line, gameId).carriedIn += count;
  if (!isPricedByRead(line.terms)) {
    line.values.push(...valuesCents);
    fitValues(line);
  }
  if (billedCents > 0) position.documents.push({ ...newDocument(carryId, 'carried', billedCents, taxCents), number: 'carried over' });
  position.billedCents += billedCents;
  position.carries.push({ carryId, billedCents: -billedCents });
}

