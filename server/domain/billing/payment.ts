import { MONEY } from '../ledger/account.ts';
import type { Posting } from '../ledger/posting.ts';
import type { Cents } from '../money.ts';
import { amountText, centsOf } from '../money.ts';
import { refuse } from '../refusals.ts';

const post = (to: string, from: string, amount: number, keys: Pick<Posting, 'invoiceId' | 'unappliedId'> = {}): Posting => ({
  journal: 'money',
  from,
  to,
  amount,
  ...keys,
});

function checkAmount(amountCents: number): void {
  if (!Number.isSafeInteger(amountCents) || amountCents <= 0) refuse('amount-not-above-zero');
}

/** Where received money lies: banked already (a transfer, a card), or in the drawer until it is deposited. */
export type Drawer = 'cash' | 'undepositedReceipts';

/** Money received: a credit of the payer until it is applied to invoices. */
export function paymentReceived(paymentId: string, amountCents: Cents, into: Drawer = 'cash'): Posting[] {
  checkAmount(amountCents);
  return [post(MONEY[into], MONEY.unappliedCredit, amountCents, { unappliedId: paymentId })];
}

/** A use of a credit (a payment's or a memo's) on an invoice, in cents. */
export interface Application {
  unappliedId: string;
  invoiceId: string;
  amountCents: Cents;
}

/**
 * A credit used on an invoice.
 *
 * @param unappliedCents what is left of the credit
 * @param balanceCents what is open on the invoice
 * @throws Refused `more-than-unapplied`, `more-than-balance`, `amount-not-above-zero`
 */
export function creditApplied(application: Application, unappliedCents: number, balanceCents: number): Posting[] {
  const { unappliedId, invoiceId, amountCents } = application;
  checkAmount(amountCents);
  if (amountCents > unappliedCents) refuse('more-than-unapplied', { unapplied: amountText(centsOf(unappliedCents)) });
  if (amountCents > balanceCents) refuse('more-than-balance', { balance: amountText(centsOf(balanceCents)) });
  return [post(MONEY.unappliedCredit, MONEY.receivable, amountCents, { unappliedId, invoiceId })];
}

/** The opposite: the invoice is open again, the credit is there again. */
export function creditUnapplied({ unappliedId, invoiceId, amountCents }: Application): Posting[] {
  checkAmount(amountCents);
  return [post(MONEY.receivable, MONEY.unappliedCredit, amountCents, { unappliedId, invoiceId })];
}

/**
 * Spreads a credit over open invoices in the order given (oldest first), as far as it goes; what is left stays
 * unapplied.
 */
export function spreadOverInvoices(unappliedId: string, amountCents: Cents, open: readonly { invoiceId: string; balanceCents: number }[]): Application[] {
  let left: number = amountCents;
  const applications: Application[] = [];
  for (const { invoiceId, balanceCents } of open) {
    const part = Math.min(left, balanceCents);
    if (part <= 0) continue;
    applications.push({ unappliedId, invoiceId, amountCents: centsOf(part) });
    left -= part;
  }
  return applications;
}

/**
 * A payment that the bank sent back, or that was written down by mistake: every application is undone, the money
 * leaves the place where it lay, the bank takes its fee.
 *
 * @param outOf where the money lay; the bank's fee always leaves the bank
 * @throws Refused `more-than-unapplied` when part of the payment was refunded
 */
export function paymentReturned(
  payment: { paymentId: string; amountCents: Cents; refundedCents?: number },
  applications: readonly Application[],
  bankFeeCents: Cents,
  outOf: Drawer = 'cash',
): Posting[] {
  const { paymentId, amountCents, refundedCents = 0 } = payment;
  if (refundedCents > 0) refuse('more-than-unapplied', { unapplied: amountText(centsOf(amountCents - refundedCents)) });
  return [
    ...applications.flatMap(creditUnapplied),
    post(MONEY.unappliedCredit, MONEY[outOf], amountCents, { unappliedId: paymentId }),
    ...(bankFeeCents > 0 ? [post(MONEY.bankCharges, MONEY.cash, bankFeeCents)] : []),
  ];
}

/**
 * Money given back out of a credit.
 *
 * @throws Refused `more-than-unapplied`
 */
export function creditRefunded(unappliedId: string, amountCents: Cents, unappliedCents: number): Posting[] {
  checkAmount(amountCents);
  if (amountCents > unappliedCents) refuse('more-than-unapplied', { unapplied: amountText(centsOf(unappliedCents)) });
  return [post(MONEY.unappliedCredit, MONEY.cash, amountCents, { unappliedId })];
}

/**
 * Goods are not paid back in money: of a memo only the parts that stand on invoices are, and of those what no invoice used.
 *
 * @param parts net and tax of the memo, in cents; a part without an invoice was paid in goods
 * @param usedCents applied to invoices or paid back so far
 * @throws Refused `credit-of-goods`
 * @source common practice, no source
 */
export function checkNotOfGoods(parts: readonly { invoiceId?: string; netCents: number; taxCents: number }[], usedCents: number, amountCents: number): void {
  if (parts.every(({ invoiceId }) => invoiceId !== undefined)) return;
  const inMoney = parts.reduce((sum, { invoiceId, netCents, taxCents }) => sum + (invoiceId === undefined ? 0 : netCents + taxCents), 0);
  const refundable = Math.max(0, inMoney - usedCents);
  if (amountCents > refundable) refuse('credit-of-goods', { refundable: amountText(centsOf(refundable)) });
}

/** Payments, memos and carry-over never cross sellers of record. */
export function checkSameSeller(oneSellerId: string, otherSellerId: string): void {
  if (oneSellerId !== otherSellerId) refuse('payment-crosses-sellers');
}

/** Who pays: a payer by its id, and the sponsor it pays for where it is told. */
export interface Paying {
  payerId: string;
  sponsorId: string | null;
}

/**
 * A payment pays the invoices of its own payer, and those of other payers of the same sponsor: a store's check may pay
 * what its head office was billed, but never what a stranger was.
 *
 * @throws Refused `payment-of-another-payer`
 */
export function checkPaysFor(payment: Paying, invoice: Paying): void {
  if (payment.payerId === invoice.payerId) return;
  if (payment.sponsorId === null || payment.sponsorId !== invoice.sponsorId) refuse('payment-of-another-payer');
}

/** Sales tax paid on to the state. */
export function taxRemitted(amountCents: Cents): Posting[] {
  checkAmount(amountCents);
  return [post(MONEY.salesTax, MONEY.cash, amountCents)];
}
