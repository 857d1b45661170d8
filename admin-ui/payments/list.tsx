import { Go } from '../fields/go.tsx';
import { Tag } from '../fields/tag.tsx';
import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { findFilter, pickFilter } from '../lists/filters.tsx';
import { ListPage } from '../lists/list-page.tsx';
import { byWhat } from '../words/choices.ts';
import type { Payment } from './types.ts';

function Left({ payment }: { payment: Payment }) {
  if (payment.returnKind !== null) return <Tag mood="bad">{payment.returnKind === 'mistake' ? 'A mistake' : 'Came back'}</Tag>;
  return <>{moneyText(payment.unappliedCents)}</>;
}

export const PaymentList = () => (
  <ListPage<Payment>
    title="Payments"
    addLabel="Record a payment"
    sort={{ field: 'receivedOn', order: 'DESC' }}
    filters={[findFilter(), pickFilter('payerId', 'payers', 'Payer'), pickFilter('sellerId', 'sellers', 'Seller')]}
    empty="No payment yet. Record one when the check arrives, and apply it to the invoices it pays."
    columns={[
      { label: 'Number', sortBy: 'number', show: (payment) => <Go resource="payments" id={payment.id}>{payment.number}</Go> },
      { label: 'From', show: (payment) => payment.payerName },
      { label: 'Received', sortBy: 'receivedOn', show: (payment) => dayText(payment.receivedOn) },
      { label: 'By', show: byWhat },
      { label: 'Amount', sortBy: 'amountCents', numeric: true, show: (payment) => moneyText(payment.amountCents) },
      { label: 'Not applied', numeric: true, show: (payment) => <Left payment={payment} /> },
    ]}
  />
);
