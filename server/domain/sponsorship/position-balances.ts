import { MONEY } from '../ledger/account.ts';
import { BalanceSheet } from '../ledger/balances.ts';
import type { Balances } from '../ledger/balances.ts';
import { amountsOf, earnedApart } from './contract-amounts.ts';
import type { Position } from './position.ts';
import { readsOfSlot } from './slot-reads.ts';

/**
 * What a contract's state comes to in the three journals: everything the contract itself has caused. Payments, their
 * application and write-offs are booked beside it, by billing.
 */
export function balancesOf(position: Position | null): Balances {
  const sheet = new BalanceSheet();
  if (position) {
    addReads(sheet, position);
    addAgreed(sheet, position);
    addDocuments(sheet, position);
    addRevenue(sheet, position);
  }
  return sheet.balances;
}

function addReads(sheet: BalanceSheet, position: Position): void {
  for (const line of position.lines) {
    if (line.terms.kind !== 'reads') continue;
    for (const slot of line.slots) {
      const keys = { contractId: position.contractId, commitmentId: line.terms.lineId, ...(slot.gameId ? { gameId: slot.gameId } : {}) };
      const { promised, extra, ...settled } = readsOfSlot(line, slot);
      sheet.add('reads', 'promised', -promised, keys);
      for (const [account, amount] of Object.entries(settled)) sheet.add('reads', account, amount, keys);
      sheet.add('reads', 'extra', extra, keys);
      sheet.add('reads', 'unpromised', -extra, keys);
    }
  }
}

function addAgreed(sheet: BalanceSheet, position: Position): void {
  const { priceCents, billedCents, toBillCents } = amountsOf(position);
  const keys = { contractId: position.contractId };
  sheet.add('agreed', 'promised', -priceCents, keys);
  sheet.add('agreed', 'billed', billedCents, keys);
  sheet.add('agreed', 'toBill', toBillCents, keys);
}

function addDocuments(sheet: BalanceSheet, position: Position): void {
  for (const document of position.documents) {
    const { invoiceId, kind, isVoid, netCents, taxCents, discountCents, discountTaxCents } = document;
    if (isVoid || kind === 'carried') continue;
    const grossCents = kind === 'opening' ? (position.opening?.receivableCents ?? 0) : netCents + taxCents;
    sheet.add('money', MONEY.receivable, grossCents - discountCents - discountTaxCents, { invoiceId });
    sheet.add('money', MONEY.salesTax, discountTaxCents - (kind === 'opening' ? 0 : taxCents));
  }
  for (const { memoId, netCents, taxCents } of position.memos) {
    sheet.add('money', MONEY.unappliedCredit, -(netCents + taxCents), { unappliedId: memoId });
    sheet.add('money', MONEY.salesTax, taxCents);
  }
  // What is carried over leaves one contract and enters the other through a credit that is zero once both are booked.
  for (const { carryId, billedCents } of position.carries) {
    sheet.add('money', MONEY.unappliedCredit, -billedCents, { unappliedId: carryId });
  }
  sheet.add('money', MONEY.goodsReceived, position.goodsCents);
}

function addRevenue(sheet: BalanceSheet, position: Position): void {
  const { contractBalanceCents, keptCents, feesCents, topUpCents, allowancesCents } = amountsOf(position);
  const { cashCents, inKindCents } = earnedApart(position);
  const { opening } = position;
  sheet.add('money', MONEY.contractBalance, contractBalanceCents, { contractId: position.contractId });
  sheet.add('money', MONEY.sponsorshipRevenue, (opening?.earnedCashCents ?? 0) - cashCents);
  sheet.add('money', MONEY.inKindRevenue, (opening?.earnedInKindCents ?? 0) - inKindCents);
  sheet.add('money', MONEY.unreadRevenue, -(keptCents + feesCents + topUpCents));
  sheet.add('money', MONEY.allowances, allowancesCents);
  if (opening) sheet.add('money', MONEY.openingBalance, -(opening.receivableCents + opening.contractBalanceCents));
}
