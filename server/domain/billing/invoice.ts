import type { Day } from '../day.ts';
import { addDays } from '../day.ts';
import { salesTaxOn } from '../ledger/sales-tax.ts';
import type { Cents } from '../money.ts';
import { addCents, amountText, centsOf, subtractCents } from '../money.ts';
import { refuse } from '../refusals.ts';
import { taxableOf } from './line-tax.ts';
import type { TaxedLine } from './line-tax.ts';

export interface InvoiceAmounts {
  netCents: Cents;
  taxCents: Cents;
  grossCents: Cents;
}

/**
 * Net, tax and gross of an invoice; tax is rounded once, on the taxed parts of all lines together.
 *
 * @param taxBasisPoints 500 is 5 %
 */
export function invoiceAmounts(lines: readonly TaxedLine[], taxBasisPoints: number): InvoiceAmounts {
  const netCents = addCents(...lines.map((line) => line.amountCents));
  const taxCents = salesTaxOn(addCents(...lines.map(taxableOf)), taxBasisPoints);
  return { netCents, taxCents, grossCents: addCents(netCents, taxCents) };
}

/** The day an invoice falls due: `netDays` after it is issued. */
export function dueOn(issuedOn: Day, netDays: number): Day {
  return addDays(issuedOn, netDays);
}

/** What has happened to an invoice so far, in cents; all are zero or more. */
export interface InvoiceFacts {
  grossCents: number;
  /** payments and memos applied, less what was unapplied */
  appliedCents: number;
  discountCents?: number;
  /** written off less recovered */
  writtenOffCents?: number;
  /** net credited by memos, used on this invoice or not */
  creditedCents?: number;
  /** net carried into the next term */
  carriedCents?: number;
  isVoid?: boolean;
}

/** What is still to be paid on an invoice. */
export function balanceOfInvoice(facts: InvoiceFacts): Cents {
  if (facts.isVoid) return centsOf(0);
  const { grossCents, appliedCents, discountCents = 0, writtenOffCents = 0 } = facts;
  return centsOf(grossCents - appliedCents - discountCents - writtenOffCents);
}

export const INVOICE_STATES = ['open', 'partlyPaid', 'paid', 'overdue', 'writtenOff', 'void'] as const;
export type InvoiceState = (typeof INVOICE_STATES)[number];

/** The state of an invoice on a day; on the due day itself it is not overdue yet. Written off is what was given up in whole or in its last part. */
export function invoiceState(facts: InvoiceFacts & { dueOn: Day }, today: Day): InvoiceState {
  if (facts.isVoid) return 'void';
  if (balanceOfInvoice(facts) === 0) return facts.writtenOffCents ? 'writtenOff' : 'paid';
  if (today > facts.dueOn) return 'overdue';
  return facts.appliedCents > 0 ? 'partlyPaid' : 'open';
}

/**
 * Refuses to void an invoice that something was done about.
 *
 * @throws Refused `invoice-already-void`, `void-after-payment`, `void-after-credit`, `void-after-write-off`, `void-after-carry-over`
 */
export function checkVoidable(facts: InvoiceFacts): void {
  if (facts.isVoid) refuse('invoice-already-void');
  if (facts.appliedCents !== 0) refuse('void-after-payment');
  if (facts.discountCents || facts.creditedCents) refuse('void-after-credit');
  if (facts.writtenOffCents) refuse('void-after-write-off');
  if (facts.carriedCents) refuse('void-after-carry-over');
}

/**
 * @throws Refused `amount-not-above-zero`, `invoice-is-void`, `more-than-balance`
 */
export function checkWithinBalance(facts: InvoiceFacts, amountCents: number): void {
  if (!Number.isSafeInteger(amountCents) || amountCents <= 0) refuse('amount-not-above-zero');
  if (facts.isVoid) refuse('invoice-is-void');
  const balance = balanceOfInvoice(facts);
  if (amountCents > balance) refuse('more-than-balance', { balance: amountText(balance) });
}

/**
 * The discount for paying early on what is open, and what then is to be paid. Tax is left alone.
 *
 * @param basisPoints 200 is 2 %
 */
export function earlyPayment(netCents: Cents, taxCents: Cents, basisPoints: number): { discountCents: Cents; payCents: Cents } {
  const discountCents = salesTaxOn(netCents, basisPoints);
  return { discountCents, payCents: subtractCents(addCents(netCents, taxCents), discountCents) };
}
