import { amountText, centsOf } from '../money.ts';
import { refuse } from '../refusals.ts';
import { newDocument } from './apply-signing.ts';
import { amountsOf } from './contract-amounts.ts';
import { creditBilled, lowerPrice } from './credit-price.ts';
import type { BilledLine, HappeningOf } from './happening.ts';
import { isPricedByRead } from './line-values.ts';
import { checkAmount } from './line-of.ts';
import type { BilledDocument, Position } from './position.ts';

/** @throws Refused `more-than-to-bill`, `invoice-issued-twice`, `amount-not-above-zero`; a deposit may run ahead of reads priced each */
export function bill(position: Position, { invoiceId, number, netCents, taxCents, lines }: HappeningOf<'invoiced'>): void {
  checkAmount(netCents);
  if (position.documents.some((document) => document.invoiceId === invoiceId)) refuse('invoice-issued-twice');
  const room = mayRunAhead(position, lines) ? Infinity : Math.max(0, amountsOf(position).toBillCents);
  if (netCents > room) refuse('more-than-to-bill', { toBill: amountText(centsOf(room)) });
  position.documents.push({ ...newDocument(invoiceId, 'invoice', netCents, taxCents), number, lines });
  position.billedCents += netCents;
  for (const readId of lines.flatMap((line) => line.readIds ?? [])) {
    const read = position.reads[readId];
    if (read) read.invoiceId = invoiceId;
  }
}

const mayRunAhead = (position: Position, lines: readonly BilledLine[]) =>
  lines.some((line) => line.isDeposit) && position.lines.some((line) => isPricedByRead(line.terms));

/**
 * Voids an invoice. Whether something was paid or written off on it is the accounts office's to say
 * (`checkVoidable` in billing).
 *
 * @throws Refused `unknown-invoice`, `invoice-already-void`, `void-after-credit`, `void-after-carry-over`
 */
export function voidInvoice(position: Position, { invoiceId }: HappeningOf<'invoiceVoided'>): void {
  const document = documentOf(position, invoiceId);
  if (document.isVoid) refuse('invoice-already-void');
  if (document.creditedCents > 0 || document.discountCents > 0) refuse('void-after-credit');
  if (document.carriedCents > 0) refuse('void-after-carry-over');
  document.isVoid = true;
  position.billedCents -= document.netCents;
  for (const read of Object.values(position.reads)) if (read.invoiceId === invoiceId) delete read.invoiceId;
}

function documentOf(position: Position, invoiceId: string): BilledDocument {
  const found = position.documents.find((document) => document.invoiceId === invoiceId && document.kind === 'invoice');
  return found ?? refuse('unknown-invoice');
}

/** A concession on what was given already: revenue stays, an allowance stands against it. */
export function allow(position: Position, happening: HappeningOf<'allowanceGiven'>): void {
  checkAmount(happening.amountCents);
  const { revenueCents, allowancesCents } = amountsOf(position);
  const room = revenueCents - allowancesCents;
  if (happening.amountCents > room) refuse('more-than-earned', { earned: amountText(centsOf(Math.max(0, room))) });
  lowerPrice(position, happening, () => {
    position.allowancesCents += happening.amountCents;
  });
}

/** A discount for paying early: an allowance against the invoice itself; its tax stays unless it is named. */
export function discount(position: Position, { invoiceId, amountCents, taxCents = centsOf(0) }: HappeningOf<'discountTaken'>): void {
  checkAmount(amountCents);
  const document = position.documents.find((one) => one.invoiceId === invoiceId && one.kind !== 'carried') ?? refuse('unknown-invoice');
  if (document.isVoid) refuse('invoice-is-void');
  const room = document.netCents - document.creditedCents - document.carriedCents - document.discountCents;
  if (amountCents > room) refuse('more-than-balance', { balance: amountText(centsOf(room)) });
  const taxLeftCents = document.taxCents - document.creditedTaxCents - document.discountTaxCents;
  if (taxCents > taxLeftCents) refuse('more-than-tax', { tax: amountText(centsOf(taxLeftCents)) });
  document.discountCents += amountCents;
  document.discountTaxCents += taxCents;
  position.allowancesCents += amountCents;
  position.billedCents -= amountCents;
}

/** Credits what was billed beyond what is agreed now, after reads priced each were taken back. */
export function creditOverbilling(position: Position, happening: HappeningOf<'overbillingCredited'>): void {
  const { toBillCents } = amountsOf(position);
  if (toBillCents >= 0) refuse('nothing-overbilled');
  creditBilled(position, happening, -toBillCents);
}

/** Takes what the least amount exceeds the earned by into the books, at the end of the term. */
export function claimMinimum(position: Position): void {
  if (position.terms.billAtLeastCents === undefined) refuse('no-minimum-agreed');
  if (position.minimumClaimed) refuse('minimum-already-billed');
  position.minimumClaimed = true;
}

/** Goods stand in for an invoice, at the fair value agreed at signing. */
export function receiveGoods(position: Position, { amountCents }: HappeningOf<'goodsReceived'>): void {
  checkAmount(amountCents);
  if (!position.terms.inKindCents) refuse('not-in-kind');
  const room = Math.min(position.terms.inKindCents - position.goodsCents, amountsOf(position).toBillCents);
  if (amountCents > room) refuse('more-than-to-bill', { toBill: amountText(centsOf(Math.max(0, room))) });
  position.goodsCents += amountCents;
  position.billedCents += amountCents;
}
