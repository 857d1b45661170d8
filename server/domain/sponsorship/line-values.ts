import { daysBetween } from '../day.ts';
import type { Cents } from '../money.ts';
import { amountText, centsOf, splitByLargestRemainder, splitEvenly } from '../money.ts';
import { refuse } from '../refusals.ts';
import type { BenefitLine, ContractTerms, LineTerms } from './contract-terms.ts';
import type { LinePosition } from './position.ts';
import { earnsPerGame, ordinalsOf, settledOrdinals } from './slot-reads.ts';

/** Days over which a benefit earns, both ends counted. */
function daysOf(line: BenefitLine): number {
  return line.startsOn === undefined || line.endsOn === undefined ? 0 : daysBetween(line.startsOn, line.endsOn) + 1;
}

/** How many ordinals hold the value of a line: reads, the guaranteed reads, games, pieces or days. */
export function valuedCount(line: LineTerms): number {
  return line.kind === 'benefit' && line.earns === 'overDays' ? daysOf(line) : countAtRate(line);
}

/** How many times the rate card's price the line would cost alone. */
function countAtRate(line: LineTerms): number {
  if (line.kind === 'benefit') return line.quantity;
  if (line.counting === 'onOccurrence') return line.gamesPlanned ?? line.readsAtLeast ?? 0;
  if (line.counting === 'perTerm') return line.reads;
  return (line.games ?? []).reduce((sum, game) => sum + game.reads, 0);
}

/**
 * The price shared out over the fixed lines by count × rate-card price; `free` lines take their share too.
 *
 * @returns cents per line, in the order of the lines; 0 for a line priced by the read
 * @throws Refused `price-without-rates` when there is a price and every rate is zero
 * @source relative stand-alone selling price, ASC 606-10-32-31
 */
export function priceByLine(terms: ContractTerms): Cents[] {
  const weights = terms.lines.map((line) => (isPricedByRead(line) ? 0 : countAtRate(line) * line.rateCents));
  if (weights.every((weight) => weight === 0)) {
    if (terms.priceCents !== 0) refuse('price-without-rates');
    return weights.map(() => centsOf(0));
  }
  return splitByLargestRemainder(terms.priceCents, weights);
}

export function isPricedByRead(line: LineTerms): boolean {
  return line.kind === 'reads' && line.pricing === 'perRead';
}

/** An amount in equal parts over ordinals; nothing over none. */
export function valuesOver(amountCents: number, count: number): number[] {
  if (count > 0) return splitEvenly(centsOf(amountCents), count);
  if (amountCents !== 0) refuse('value-without-reads', { amount: amountText(centsOf(amountCents)) });
  return [];
}

/** The values that nothing has earned yet, in cents. */
export function openCentsOf(line: LinePosition): number {
  return sumOf(line.values.slice(settledOrdinals(line)));
}

export function earnedCentsOf(line: LinePosition): number {
  return sumOf(line.values.slice(0, settledOrdinals(line)));
}

/** Takes the last ordinals off a line and answers their values, in order. */
export function takeFromEnd(line: LinePosition, count: number): number[] {
  if (isPricedByRead(line.terms) || earnsPerGame(line)) return [];
  return line.values.splice(line.values.length - count, count);
}

/**
 * Shares the open part of a line anew over its open ordinals; what is earned stays as it is.
 *
 * @param settled ordinals earned before the happening, so that extra reads that now count earn new values
 * @param addedCents what the happening adds to the open part; below zero it takes away
 * @throws Refused `more-than-open-value`, `value-without-reads`
 */
export function resplitOpen(line: LinePosition, settled: number, addedCents: number): void {
  const open = sumOf(line.values.slice(settled)) + addedCents;
  if (open < 0) refuse('more-than-open-value', { open: amountText(centsOf(open - addedCents)) });
  const count = openValuedOrdinals(line, settled);
  line.values = [...line.values.slice(0, settled), ...valuesOver(open, count)];
  fitValues(line);
}

/** Open ordinals that hold value: on occurrence the guaranteed ones, unless all of those are settled. */
function openValuedOrdinals(line: LinePosition, settled: number): number {
  const open = ordinalsOf({ ...line, values: earnsPerGame(line) ? line.values : [] }) - settled;
  if (line.terms.kind !== 'reads' || line.terms.counting !== 'onOccurrence' || earnsPerGame(line)) return open;
  const slot = line.slots[0];
  if (!slot) return open;
  const guaranteed = slot.promised + slot.carriedIn - slot.credited - slot.released - slot.forfeited - slot.carriedOut - settled;
  return guaranteed > 0 ? Math.min(open, guaranteed) : open;
}

/** Keeps one value per ordinal: ordinals beyond what is guaranteed hold nothing. */
export function fitValues(line: LinePosition): void {
  if (isPricedByRead(line.terms) || earnsPerGame(line)) return;
  const count = ordinalsOf(line);
  while (line.values.length < count) line.values.push(0);
  if (line.values.slice(count).some((value) => value !== 0)) throw new RangeError('a value would be lost');
  line.values.length = count;
}

export function sumOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}
