import { amountText, centsOf } from '../money.ts';
import { applyHappening, effectOf } from '../sponsorship/apply-happening.ts';
import type { HappeningEffect } from '../sponsorship/apply-happening.ts';
import { amountsOf } from '../sponsorship/contract-amounts.ts';
import type { Happening } from '../sponsorship/happening.ts';
import type { Position } from '../sponsorship/position.ts';
import { readsOfLine } from '../sponsorship/slot-reads.ts';
import { toldNow } from '../sponsorship/told-now.ts';

/** What would happen, before anybody says yes. Amounts in cents. */
export interface Foreseen extends Omit<HappeningEffect, 'memoParts'> {
  /** what becomes revenue without a read */
  keptCents: number;
  /** reads still owed on the line concerned, before and after; null where no line is */
  owedBefore: number | null;
  owedAfter: number | null;
  invoices: { invoiceId: string; number: string; netCents: number; taxCents: number; appliedCents: number }[];
  /** plain sentences, in order */
  words: string[];
}

const money = (cents: number): string => `$${amountText(centsOf(cents))}`;

/**
 * Says in words what a credit, an allowance, a forfeit, a release or a minimum would do, without booking it.
 *
 * @param openCents what is open on an invoice, by its id: as much as a memo on it would pay off at once
 * @throws Refused as `applyHappening`
 */
export function foresee(position: Position, happening: Happening, openCents: ReadonlyMap<string, number>): Foreseen {
  const { memoParts, ...effect } = effectOf(position, happening);
  const after = applyHappening(position, toldNow(position, 'memoId' in happening ? happening : ({ ...happening, memoId: 'tried' } as Happening)));
  const [before, then] = [amountsOf(position), amountsOf(after)];
  const keptCents = then.revenueCents - before.revenueCents;
  const invoices = memoParts.flatMap(({ invoiceId, netCents, taxCents }) =>
    invoiceId === undefined ? [] : [{ invoiceId, number: numberOf(position, invoiceId), netCents, taxCents, appliedCents: Math.min(netCents + taxCents, openCents.get(invoiceId) ?? 0) }],
  );
  const lineId = 'lineId' in happening ? happening.lineId : null;
  const owed = (at: Position) => (lineId === null ? null : readsOfLine(at.lines.find((line) => line.terms.lineId === lineId)!).owed);
  const foreseen = { ...effect, keptCents, owedBefore: owed(position), owedAfter: owed(after), invoices };
  return { ...foreseen, words: wordsOf(happening, foreseen, then.toBillCents - before.toBillCents) };
}

const numberOf = (position: Position, invoiceId: string): string => position.documents.find((one) => one.invoiceId === invoiceId)?.number ?? '';

function wordsOf(happening: Happening, foreseen: Omit<Foreseen, 'words'>, toBillCents: number): string[] {
  const { owedBefore, owedAfter, valueCents, keptCents } = foreseen;
  const owed = owedBefore === null ? [] : [`${reads(owedBefore)} ${owedBefore === 1 ? 'is' : 'are'} owed now, ${owedAfter} afterward.`];
  if (happening.kind === 'readsForfeited') return [...owed, keptCents > 0 ? `Their value of ${money(keptCents)} is kept and becomes revenue without a read.` : NO_DOLLARS];
  if (happening.kind === 'readsReleased') return [...owed, releasedWords(foreseen)];
  if (happening.kind === 'minimumClaimed') return [minimumWords(keptCents, toBillCents)];
  if (valueCents === 0 && foreseen.memoCents === 0) return [...owed, NO_DOLLARS];
  const worth = happening.kind === 'overbillingCredited' ? [] : [`The price goes down by ${money(valueCents)}.`];
  return [...owed, ...worth, ...unbilledWords(foreseen), ...memoWords(foreseen)];
}

const NO_DOLLARS = 'No dollars change.';

const reads = (count: number): string => `${count} ${count === 1 ? 'read' : 'reads'}`;

function releasedWords({ keptCents, owedAfter }: Omit<Foreseen, 'words'>): string {
  if (keptCents > 0) return `No read is left to carry their value, so ${money(keptCents)} is kept and becomes revenue without a read.`;
  return owedAfter ? `Their value moves on to the ${reads(owedAfter)} still owed; the price stays.` : 'The price stays.';
}

function minimumWords(keptCents: number, toBillCents: number): string {
  if (keptCents === 0) return 'What was earned reaches the least amount already, so nothing is added.';
  return `The least amount exceeds what was earned by ${money(keptCents)}; that much becomes revenue${toBillCents > 0 ? ' and is to be billed' : ''}.`;
}

function unbilledWords({ unbilledCents, memoCents }: Omit<Foreseen, 'words'>): string[] {
  if (unbilledCents <= 0) return [];
  return [memoCents > 0 ? `${money(unbilledCents)} of it was not billed yet and comes off what is still to bill.` : 'It was not billed yet, so it comes off what is still to bill and no credit memo is needed.'];
}

function memoWords({ memoCents, memoTaxCents, memoGrossCents, invoices }: Omit<Foreseen, 'words'>): string[] {
  if (memoCents === 0) return [];
  const on = invoices.length > 0 ? ` on ${invoices.map((one) => `invoice ${one.number}`).join(' and ')}` : '';
  const paysOff = invoices.reduce((sum, one) => sum + one.appliedCents, 0);
  const left = memoGrossCents - paysOff;
  return [
    `A credit memo is written${on}: ${money(memoCents)}${memoTaxCents > 0 ? ` and ${money(memoTaxCents)} tax, ${money(memoGrossCents)} in all` : ''}.`,
    ...(paysOff > 0 ? [`${money(paysOff)} of it pays off what is still open there.`] : []),
    ...(left > 0 ? [`${money(left)} stays as a credit of the payer, to be applied or refunded.`] : []),
  ];
}
