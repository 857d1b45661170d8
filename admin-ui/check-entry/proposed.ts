import { proposedApplications } from '../../server/domain/billing/proposed-applications.ts';
import { centsOf } from '../../server/domain/money.ts';
import { ask } from '../api/http.ts';
import type { Invoice } from '../invoices/types.ts';
import { claimedCents, countedChecks, type BatchCheck, type Part } from './batch.ts';

export interface OpenInvoice {
  invoiceId: string;
  invoiceNumber: string;
  dueOn: string;
  balanceCents: number;
}

export interface Proposed {
  open: OpenInvoice[];
  leftOut: ReadonlySet<string>;
  parts: Part[];
  leftCents: number;
  warning: string | null;
}

/** The open invoices of a payer with a seller, the oldest first, less what checks on their way already pay. */
export async function openInvoices(payerId: string, sellerId: string, checks: readonly BatchCheck[]): Promise<OpenInvoice[]> {
  const { data } = await ask<{ data: Invoice[] }>(`/invoices?unpaid=true&payerId=${payerId}&sellerId=${sellerId}&sort=dueOn&perPage=200`);
  const claimed = claimedCents(checks);
  return data
    .map((invoice) => ({ invoiceId: invoice.id, invoiceNumber: invoice.number, dueOn: invoice.dueOn, balanceCents: invoice.balanceCents - (claimed.get(invoice.id) ?? 0) }))
    .filter((invoice) => invoice.balanceCents > 0);
}

/** What the check would pay of the invoices that are not left out. */
export function proposedFor(amountCents: number, open: readonly OpenInvoice[], leftOut: ReadonlySet<string>, warning: string | null): Proposed {
  const applications = proposedApplications('check', centsOf(amountCents), open.filter(({ invoiceId }) => !leftOut.has(invoiceId)));
  const parts = applications.map(({ invoiceId, amountCents: part }) => ({ invoiceId, invoiceNumber: open.find((one) => one.invoiceId === invoiceId)!.invoiceNumber, amountCents: part }));
  return { open: [...open], leftOut, parts, leftCents: amountCents - parts.reduce((sum, part) => sum + part.amountCents, 0), warning };
}

/** A check that stands in the batch already is most likely the same piece of paper. */
export function warningOf(check: { payerId: string; reference: string }, checks: readonly BatchCheck[]): string | null {
  const twice = countedChecks(checks).some((one) => one.payerId === check.payerId && one.reference === check.reference);
  return twice ? `Check ${check.reference} of this payer is in this batch already.` : null;
}
