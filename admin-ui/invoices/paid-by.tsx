import { Go } from '../fields/go.tsx';
import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { Section } from '../show/section.tsx';
import type { Invoice, InvoiceApplication } from './types.ts';

export function PaidBy({ invoice }: { invoice: Invoice }) {
  const applications = invoice.applications ?? [];
  return (
    <Section title="Paid by">
      {applications.length === 0 ? (
        <EmptyList>No payment is applied to this invoice yet.</EmptyList>
      ) : (
        <Rows<InvoiceApplication>
          label="Payments of this invoice"
          rows={applications}
          columns={[
            { label: 'Payment', show: (one) => <Go resource="payments" id={one.paymentId}>{one.paymentNumber ?? 'Credit memo'}</Go> },
            { label: 'On', show: (one) => dayText(one.appliedOn) },
            { label: 'Amount', numeric: true, show: (one) => `${moneyText(one.amountCents)}${one.takenBack ? ' (taken back)' : ''}` },
          ]}
        />
      )}
    </Section>
  );
}
