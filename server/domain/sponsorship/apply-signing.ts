import { amountText, centsOf } from '../money.ts';
import { refuse } from '../refusals.ts';
import { amountsOf, earnedApart } from './contract-amounts.ts';
import { checkTerms } from './contract-terms.ts';
import type { ContractTerms, LineTerms } from './contract-terms.ts';
import type { HappeningOf } from './happening.ts';
import { fitValues, isPricedByRead, priceByLine, valuedCount, valuesOver } from './line-values.ts';
import { checkCount, emptySlot, lineOf, slotOf } from './line-of.ts';
import type { LinePosition, Position } from './position.ts';
import { earnsPerGame, readsOfSlot } from './slot-reads.ts';

/**
 * The position at signing: reads owed, the price shared out and frozen.
 *
 * @throws Refused as `checkTerms` and `priceByLine` do
 */
export function signedPosition(terms: ContractTerms): Position {
  checkTerms(terms);
  const prices = priceByLine(terms);
  return {
    contractId: terms.contractId,
    terms,
    lines: terms.lines.map((line, place) => newLine(line, prices[place] ?? 0)),
    reads: {},
    occurrences: {},
    deliveries: {},
    documents: [],
    memos: [],
    keptCents: 0,
    feesCents: 0,
    allowancesCents: 0,
    billedCents: 0,
    goodsCents: 0,
    carries: [],
    minimumClaimed: false,
    minimumWaived: false,
    ended: false,
    closed: false,
  };
}

/** A line as it enters the contract, its price in equal parts over its ordinals. */
export function newLine(terms: LineTerms, priceCents: number): LinePosition {
  const line: LinePosition = { terms, slots: slotsOf(terms), values: [], gamesPlayed: [] };
  if (isPricedByRead(terms)) {
    if (priceCents !== 0) refuse('price-is-per-read');
    return line;
  }
  line.values = valuesOver(priceCents, valuedCount(terms));
  if (!earnsPerGame(line)) fitValues(line);
  return line;
}

function slotsOf(terms: LineTerms) {
  if (terms.kind === 'benefit') return [emptySlot(valuedCount(terms))];
  if (terms.counting === 'perGame' || terms.counting === 'perNight') {
    return (terms.games ?? []).map((game) => emptySlot(game.reads, game.gameId));
  }
  if (terms.counting === 'perTerm') return [emptySlot(terms.reads)];
  const slot = emptySlot(terms.readsAtLeast ?? 0);
  return [terms.readsAtMost === undefined ? slot : { ...slot, atMost: terms.readsAtMost }];
}

/**
 * A contract taken over in mid-season: signed, with what was given, billed and paid before.
 *
 * @throws Refused `more-given-than-promised`, `more-paid-than-billed`, `more-than-to-bill`
 */
export function openedPosition(happening: HappeningOf<'openingPosition'>): Position {
  const position = signedPosition(happening.terms);
  for (const { lineId, gameId, count } of happening.given) {
    if (count === 0) continue;
    checkCount(count);
    const line = lineOf(position, lineId);
    const slot = slotOf(line, gameId);
    if (line.terms.kind === 'reads' && line.terms.counting === 'onOccurrence') slot.occurrences += count;
    slot.counted += count;
    if (readsOfSlot(line, slot).extra > 0) refuse('more-given-than-promised');
    fitValues(line);
  }
  bookEarlierBilling(position, happening);
  return position;
}

function bookEarlierBilling(position: Position, { billedCents, paidCents, invoiceId }: HappeningOf<'openingPosition'>): void {
  const { toBillCents } = amountsOf(position);
  if (billedCents > toBillCents) refuse('more-than-to-bill', { toBill: amountText(centsOf(toBillCents)) });
  if (paidCents > billedCents) refuse('more-paid-than-billed');
  if (billedCents > 0) position.documents.push({ ...newDocument(invoiceId, 'opening', billedCents, 0), number: 'opening' });
  position.billedCents = billedCents;
  const { cashCents, inKindCents } = earnedApart(position);
  position.opening = {
    earnedCashCents: cashCents,
    earnedInKindCents: inKindCents,
    receivableCents: billedCents - paidCents,
    contractBalanceCents: cashCents + inKindCents - billedCents,
  };
}

export function newDocument(invoiceId: string, kind: Position['documents'][number]['kind'], netCents: number, taxCents: number) {
  const nothing = { creditedCents: 0, creditedTaxCents: 0, carriedCents: 0, discountCents: 0, discountTaxCents: 0 };
  return { invoiceId, number: '', kind, netCents, taxCents, ...nothing, isVoid: false, lines: [] };
}
