import { Go } from '../fields/go.tsx';
import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { Section } from '../show/section.tsx';
import type { Invoice, InvoiceApplication, InvoiceDiscount } from './types.ts';

const Source = ({ of: { paymentId, paymentNumber, creditMemoId, creditMemoNumber } }: { of: InvoiceApplication }) =>
  paymentId ? <Go resource="payments" id={paymentId}>Payment {paymentNumber}</Go> : <Go resource="credit-memos" id={creditMemoId}>Credit memo {creditMemoNumber}</Go>;

export function PaidBy({ invoice }: { invoice: Invoice }) {
  const applications = invoice.applications ?? [];
  return (
    <Section title="Paid and credited">
      {applications.length === 0 ? (
        <EmptyList>No payment or credit is applied to this invoice yet.</EmptyList>
      ) : (
        <Rows<InvoiceApplication>
          label="Payments of this invoice"
          rows={applications}
          columns={[
            { label: 'Paid by', show: (one) => <Source of={one} /> },
            { label: 'On', show: (one) => dayText(one.appliedOn) },
            { label: 'Amount', numeric: true, show: (one) => `${moneyText(one.amountCents)}${one.cameBack ? ' (the check came back)' : one.takenBack ? ' (taken back)' : ''}` },
          ]}
        />
      )}
      <Discounts invoice={invoice} />
    </Section>
  );
}

function Discounts({ invoice: { discounts = [] } }: { invoice: Invoice }) {
  if (discounts.length === 0) return null;
  return (
    <Rows<InvoiceDiscount>
      label="Discounts on this invoice"
      rows={discounts}
      columns={[
        { label: 'Discount', show: (one) => one.reason },
        { label: 'On', show: (one) => dayText(one.takenOn) },
        { label: 'Amount', numeric: true, show: (one) => moneyText(one.amountCents + one.taxCents) },
      ]}
    />
  );
}
