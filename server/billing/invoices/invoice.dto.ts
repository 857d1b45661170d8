import { INVOICE_STATES } from '../../domain/billing/invoice.ts';
import type { InvoiceState } from '../../domain/billing/invoice.ts';
import { ChoiceField, DayField, IdField, TextField } from '../../platform/http/fields.ts';
import type { WaitingWriteOffView } from '../write-offs/write-off.dto.ts';
import { ListQuery, QueryFlag } from '../../platform/http/lists.ts';

const OPEN = { optional: true, nullable: true };

export class IssueInvoiceDto {
  @IdField() contractId: string;
  /** what falls due up to this day; without it, up to the day of issue */
  @DayField(OPEN) throughDay?: string | null;
  /** without it, today */
  @DayField(OPEN) issuedOn?: string | null;
}

export class VoidInvoiceDto {
  @TextField(1, 500) reason: string;
  @DayField(OPEN) voidedOn?: string | null;
}

export class DueQuery {
  @DayField({ optional: true }) through?: string;
}

export class InvoiceListQuery extends ListQuery {
  @ChoiceField(INVOICE_STATES, { optional: true }) state?: InvoiceState;
  @IdField({ optional: true }) sellerId?: string;
  @IdField({ optional: true }) payerId?: string;
  @IdField({ optional: true }) contractId?: string;
  @IdField({ optional: true }) sponsorId?: string;
  /** past due */
  @QueryFlag() late?: boolean;
  /** open, partly paid or overdue */
  @QueryFlag() unpaid?: boolean;
}

export interface InvoiceLineView {
  id: string;
  place: number;
  description: string;
  quantity: number;
  unitCents: number | null;
  amountCents: number;
  /** null on what was issued before lines had their own */
  taxCents: number | null;
  commitmentId: string | null;
  tracedTo: Record<string, unknown>;
  /** the nights whose reads this line bills, first to last */
  nights: { id: string; heldOn: string; title: string | null; reads: number }[];
}

export interface InvoiceApplicationView {
  id: string;
  paymentId: string | null;
  paymentNumber: string | null;
  creditMemoId: string | null;
  creditMemoNumber: string | null;
  amountCents: number;
  appliedOn: string;
  takenBack: boolean;
  /** taken back because the check came back from the bank */
  cameBack: boolean;
}

export interface InvoiceView {
  id: string;
  kind: 'invoice' | 'charge' | 'opening';
  number: string;
  fiscalYear: number;
  seriesNumber: number;
  sellerId: string;
  sellerName: string;
  payerId: string;
  payerName: string;
  sponsorId: string | null;
  sponsorName: string | null;
  contractId: string | null;
  contractNumber: string | null;
  contractTitle: string | null;
  termId: string | null;
  purchaseOrderNumber: string | null;
  issuedOn: string;
  dueOn: string;
  netCents: number;
  taxBasisPoints: number;
  taxCents: number;
  grossCents: number;
  state: InvoiceState;
  appliedCents: number;
  discountCents: number;
  writtenOffCents: number;
  balanceCents: number;
  voidedOn: string | null;
  voidReason: string | null;
  recordedAt: string;
}

export interface InvoiceDiscountView {
  id: string;
  amountCents: number;
  taxCents: number;
  takenOn: string;
  reason: string;
}

export interface WholeInvoiceView extends InvoiceView {
  lines: InvoiceLineView[];
  applications: InvoiceApplicationView[];
  discounts: InvoiceDiscountView[];
  /** the request for a write-off that waits for the director */
  waitingWriteOff: WaitingWriteOffView | null;
}

/** What happened to an invoice, the first first; booked on another day where the month of its own was closed. */
export interface InvoiceStoryView {
  lines: { id: string; on: string; bookedOn: string | null; who: string | null; sentence: string }[];
}

/** What an invoice would hold, before it is issued. */
export interface DueView {
  lines: { description: string; quantity: number; unitCents: number | null; amountCents: number; taxCents: number; commitmentId: string | null }[];
  netCents: number;
  taxCents: number;
  grossCents: number;
  /** a plain sentence: why nothing is due, or through which day this is */
  why: string;
}
