import { amountText, centsOf } from '../money.ts';
import { refuse } from '../refusals.ts';
import { memoTaxOf } from '../ledger/sales-tax.ts';
import { amountsOf } from './contract-amounts.ts';
import type { MayLowerPrice, MayNeedMemo } from './happening.ts';
import { isPricedByRead } from './line-values.ts';
import type { BilledDocument, LinePosition, MemoPart, Position } from './position.ts';
import { readsOfLine } from './slot-reads.ts';

/**
 * Lowers what is agreed: the part not yet billed goes first, the rest by credit memo.
 *
 * @param change what lowers the agreed price
 * @throws Refused `memo-needed` when something billed has to be credited and no memo was prepared
 */
export function lowerPrice(position: Position, memo: MayNeedMemo, change: () => void): void {
  const before = amountsOf(position);
  change();
  fallWithPrice(position, before.priceCents, memo);
  const lowered = before.priceCents - amountsOf(position).priceCents;
  const billedPart = lowered - Math.max(0, before.toBillCents);
  if (lowered <= 0 || billedPart <= 0) return;
  creditBilled(position, memo, billedPart);
}

/**
 * An allowance falls with what it was an allowance on, so that no price ends below zero and no credit exceeds what was paid. Where reads
 * priced each were taken back the price may stand below zero already: they may still earn it, so only what fell by this change falls.
 * Where they are priced each and the happening does not say so, it was booked before that rule, and nothing falls.
 */
export function fallWithPrice(position: Position, beforeCents: number, { allowancesFall }: MayLowerPrice): void {
  const { priceCents } = amountsOf(position);
  if (priceCents >= 0 || (allowancesFall !== true && position.lines.some((line) => isPricedByRead(line.terms)))) return;
  const fallen = mayStillEarn(position) ? Math.min(-priceCents, Math.max(0, beforeCents - priceCents)) : -priceCents;
  position.allowancesCents -= fallen;
}

function mayStillEarn(position: Position): boolean {
  return position.lines.some((line) => isPricedByRead(line.terms) && (readsOfLine(line).owed > 0 || mayHappenAgain(line)));
}

function mayHappenAgain({ terms, slots }: LinePosition): boolean {
  return terms.kind === 'reads' && terms.counting === 'onOccurrence' && slots.some((slot) => slot.endedAt === undefined);
}

/**
 * Writes a memo over something billed.
 *
 * @throws Refused `memo-needed`, `unknown-invoice`, `invoice-is-void`
 */
export function creditBilled(position: Position, { memoId, invoiceId }: MayNeedMemo, netCents: number): void {
  if (memoId === undefined) return refuse('memo-needed', { amount: amountText(centsOf(netCents)) });
  const parts = takeFromDocuments(position, netCents, invoiceId, (document, part, taxCents) => {
    document.creditedCents += part;
    document.creditedTaxCents += taxCents;
  });
  const taxCents = parts.reduce((sum, part) => sum + part.taxCents, 0);
  position.memos.push({ memoId, netCents, taxCents, parts });
  position.billedCents -= netCents;
}

/**
 * Finds the invoices that an amount is taken back from: the named one first, then the latest. What no invoice holds
 * was paid in goods and has no tax.
 */
export function takeFromDocuments(
  position: Position,
  netCents: number,
  invoiceId: string | undefined,
  take: (document: BilledDocument, netCents: number, taxCents: number) => void,
): MemoPart[] {
  const parts: MemoPart[] = [];
  let left = netCents;
  for (const document of latestFirst(position, invoiceId)) {
    const part = Math.min(left, document.netCents - document.creditedCents - document.carriedCents - document.discountCents);
    if (part <= 0) continue;
    const soFar = centsOf(document.creditedCents + document.carriedCents + part);
    const invoice = { netCents: centsOf(document.netCents), taxCents: centsOf(document.taxCents) };
    const taxLeftCents = document.taxCents - document.creditedTaxCents - document.discountTaxCents;
    const taxCents = Math.min(memoTaxOf(invoice, soFar, centsOf(document.creditedTaxCents)), taxLeftCents);
    take(document, part, taxCents);
    parts.push({ invoiceId: document.invoiceId, netCents: part, taxCents });
    left -= part;
  }
  if (left > 0) parts.push({ netCents: left, taxCents: 0 });
  return parts;
}

function latestFirst(position: Position, invoiceId: string | undefined): BilledDocument[] {
  const live = position.documents.filter((document) => !document.isVoid).reverse();
  if (invoiceId === undefined) return live;
  const named = position.documents.find((document) => document.invoiceId === invoiceId) ?? refuse('unknown-invoice');
  if (named.isVoid) refuse('invoice-is-void');
  return [named, ...live.filter((document) => document !== named)];
}
