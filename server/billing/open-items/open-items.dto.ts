import type { WaitingWriteOffView } from '../write-offs/write-off.dto.ts';

/** An invoice past its due day. */
export interface LateInvoiceView {
  invoiceId: string;
  number: string;
  kind: 'invoice' | 'charge' | 'opening';
  sponsorId: string | null;
  sponsorName: string;
  payerName: string;
  sellerName: string;
  contactName: string | null;
  contactEmail: string | null;
  contactPhone: string | null;
  balanceCents: number;
  dueOn: string;
  daysPastDue: number;
}

/** Late invoices of one age, as receivables are aged by days past due. */
export interface LateGroupView {
  name: string;
  /** of all of them, shown or not */
  count: number;
  totalCents: number;
  /** the first of them */
  invoices: LateInvoiceView[];
}

/** Money or credit that waits for its use. */
export interface UnappliedView {
  kind: 'payment' | 'creditMemo';
  creditId: string;
  number: string;
  payerName: string;
  sponsorName: string | null;
  sellerName: string;
  on: string;
  amountCents: number;
  leftCents: number;
  takenByPersonId: string | null;
  /** open invoices of the same payer or sponsor with the same seller, the oldest first */
  openInvoices: { id: string; number: string; balanceCents: number }[];
}

/** Counts and sums for the home screen. */
export interface OpenItemsFigures {
  lateCount: number;
  lateCents: number;
  unappliedCount: number;
  unappliedCents: number;
  writeOffsWaiting: number;
}

export interface OpenItemsView extends OpenItemsFigures {
  asOf: string;
  /** the oldest first */
  late: LateGroupView[];
  unapplied: UnappliedView[];
  writeOffs: WaitingWriteOffView[];
}
