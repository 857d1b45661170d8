import type { Cents } from '../money.ts';
import type { Application } from './payment.ts';
import { spreadOverInvoices } from './payment.ts';

/**
 * Which open invoices a payment pays: the one whose balance is the amount, else the oldest first as far as it goes. What is
 * left stays unapplied.
 *
 * @param open in cents, the oldest first
 * @source common practice, no source: an exact amount says which invoice was meant
 */
export function proposedApplications(unappliedId: string, amountCents: Cents, open: readonly { invoiceId: string; balanceCents: number }[]): Application[] {
  const exact = open.find((invoice) => invoice.balanceCents === amountCents);
  return spreadOverInvoices(unappliedId, amountCents, exact ? [exact] : open);
}
