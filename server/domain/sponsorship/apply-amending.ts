import { amountText, centsOf, splitByLargestRemainder } from '../money.ts';
import { refuse } from '../refusals.ts';
import { newLine } from './apply-signing.ts';
import type { LineTerms } from './contract-terms.ts';
import { lowerPrice } from './credit-price.ts';
import type { HappeningOf, LineChange } from './happening.ts';
import { isPricedByRead, openCentsOf, resplitOpen, sumOf, takeFromEnd } from './line-values.ts';
import { checkCount, checkOwed, lineOf, slotOf } from './line-of.ts';
import type { LinePosition, Position } from './position.ts';
import { readsOfSlot, settledOrdinals } from './slot-reads.ts';

/**
 * An amendment counts from now on: what is earned stays. Reads added at their rate-card price keep that price; for
 * any other price the open part of the line is shared anew.
 *
 * @source ASC 606-10-25-12 and 25-13(a)
 */
export function amend(position: Position, happening: HappeningOf<'amended'>): void {
  lowerPrice(position, happening, () => {
    for (const change of happening.changes) changeLine(lineOf(position, change.lineId), change);
    for (const { line, priceCents } of happening.newLines ?? []) addLine(position, line, priceCents);
  });
}

function changeLine(line: LinePosition, { gameId, reads, priceCents }: LineChange): void {
  const slot = slotOf(line, gameId);
  const { owed, promised } = readsOfSlot(line, slot);
  if (owed + reads < 0) refuse('fewer-than-settled', { settled: promised - owed });
  if (isPricedByRead(line.terms)) {
    if (priceCents !== 0) refuse('price-is-per-read');
    slot.promised = Math.max(0, slot.promised + reads);
    return;
  }
  const settled = settledOrdinals(line);
  slot.promised += reads;
  if (slot.promised < 0) refuse('fewer-than-settled', { settled: 0 });
  if (reads > 0 && priceCents === reads * line.terms.rateCents && appendsAtTheEnd(line)) {
    line.values.push(...Array.from({ length: reads }, () => line.terms.rateCents as number));
  } else resplitOpen(line, settled, priceCents);
}

/** On occurrence the guaranteed ordinals come before those that hold nothing, so nothing can be set behind them. */
const appendsAtTheEnd = (line: LinePosition) => line.terms.kind === 'benefit' || line.terms.counting !== 'onOccurrence';

function addLine(position: Position, terms: LineTerms, priceCents: number): void {
  if (position.lines.some((line) => line.terms.lineId === terms.lineId)) refuse('line-already-there');
  position.lines.push(newLine(terms, priceCents));
}

/**
 * Reads of one line for reads of another: their value moves along, more or less money may go with it.
 *
 * @throws Refused `swap-with-itself`, `more-than-owed`, `price-is-per-read`
 */
export function swap(position: Position, happening: HappeningOf<'swapped'>): void {
  if (happening.fromLineId === happening.toLineId) refuse('swap-with-itself');
  lowerPrice(position, happening, () => {
    const from = lineOf(position, happening.fromLineId);
    const fromSlot = slotOf(from, undefined);
    checkOwed(from, fromSlot, happening.fromReads);
    checkCount(happening.toReads);
    const valueCents = sumOf(takeFromEnd(from, happening.fromReads));
    fromSlot.promised -= happening.fromReads;
    if (happening.toLine) addLine(position, withoutReads(happening.toLine), 0);
    const into = lineOf(position, happening.toLineId);
    if (isPricedByRead(into.terms)) refuse('price-is-per-read');
    const settled = settledOrdinals(into);
    slotOf(into, undefined).promised += happening.toReads;
    resplitOpen(into, settled, valueCents + happening.priceCents);
  });
}

/** The new line gets its reads from the swap itself. */
function withoutReads(line: LineTerms): LineTerms {
  return line.kind === 'benefit' ? { ...line, quantity: 0 } : { ...line, reads: 0 };
}

/**
 * A lower price for what is still to come, shared over the lines by their open value.
 *
 * @throws Refused `more-than-open-value`
 */
export function lowerOpenPrice(position: Position, happening: HappeningOf<'priceLowered'>): void {
  checkCount(happening.byCents);
  const lines = position.lines.filter((line) => openCentsOf(line) > 0);
  const openCents = sumOf(lines.map(openCentsOf));
  if (happening.byCents > openCents) refuse('more-than-open-value', { open: amountText(centsOf(openCents)) });
  const shares = splitByLargestRemainder(happening.byCents, lines.map(openCentsOf));
  lowerPrice(position, happening, () => {
    lines.forEach((line, place) => resplitOpen(line, settledOrdinals(line), -(shares[place] ?? 0)));
  });
}
