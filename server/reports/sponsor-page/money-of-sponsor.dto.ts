import type { Day } from '../../domain/day.ts';
import type { InvoiceState } from '../../domain/billing/invoice.ts';
import type { PaymentMethod } from '../../billing/payments/payment.entity.ts';

export interface InvoiceOfSponsor {
  id: string;
  number: string;
  kind: 'invoice' | 'charge' | 'opening';
  sellerId: string;
  contractTitle: string | null;
  issuedOn: Day;
  dueOn: Day;
  taxCents: number;
  grossCents: number;
  balanceCents: number;
  state: InvoiceState;
}

export interface CreditOfSponsor {
  id: string;
  number: string;
  sellerId: string;
  issuedOn: Day;
  grossCents: number;
  /** not used on an invoice and not paid back */
  leftCents: number;
}

export interface PaymentOfSponsor {
  id: string;
  number: string;
  sellerId: string;
  receivedOn: Day;
  method: PaymentMethod;
  reference: string | null;
  amountCents: number;
  leftCents: number;
  /** the check came back from the bank on that day */
  cameBackOn: Day | null;
}

/** The sponsor's dollars with one seller of record. Invoiced is what was paid, credited, taken off and is open. */
export interface DollarsWithSeller {
  sellerId: string;
  sellerName: string;
  /** where payments go, as it stands on the invoices */
  remitTo: string | null;
  keepsBooksHere: boolean;
  /** with tax, void ones left out */
  invoicedCents: number;
  taxCents: number;
  paidCents: number;
  creditedCents: number;
  /** discounts, and what is not asked for any more */
  takenOffCents: number;
  openCents: number;
  overdueCents: number;
  /** paid or credited and not used on an invoice yet */
  unusedCents: number;
}

export interface MoneyOfSponsorView {
  sellers: DollarsWithSeller[];
  invoices: InvoiceOfSponsor[];
  credits: CreditOfSponsor[];
  payments: PaymentOfSponsor[];
}
