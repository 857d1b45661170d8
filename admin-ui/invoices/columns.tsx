import { Go } from '../fields/go.tsx';
import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import type { Column } from '../lists/rows.tsx';
import { InvoiceState } from './state.tsx';
import type { Invoice } from './types.ts';

export const invoiceColumns: readonly Column<Invoice>[] = [
  { label: 'Number', sortBy: 'number', show: (invoice) => <Go resource="invoices" id={invoice.id}>{invoice.number}</Go> },
  { label: 'Sponsor', show: (invoice) => invoice.sponsorName ?? invoice.payerName },
  { label: 'Issued', sortBy: 'issuedOn', show: (invoice) => dayText(invoice.issuedOn) },
  { label: 'Due', sortBy: 'dueOn', show: (invoice) => dayText(invoice.dueOn) },
  { label: 'Amount', sortBy: 'grossCents', numeric: true, show: (invoice) => moneyText(invoice.grossCents) },
  { label: 'Unpaid', numeric: true, show: (invoice) => moneyText(invoice.balanceCents) },
  { label: 'State', show: (invoice) => <InvoiceState state={invoice.state} /> },
];
