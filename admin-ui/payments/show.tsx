import { Go } from '../fields/go.tsx';
import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { iMay } from '../session/rights.ts';
import { Facts } from '../show/facts.tsx';
import { Figures } from '../show/figures.tsx';
import { Section } from '../show/section.tsx';
import { ShowPage } from '../show/show-page.tsx';
import { METHOD_WORDS, wordFor } from '../words/choices.ts';
import { ApplyButton } from './apply-button.tsx';
import { TakeBackButton } from './take-back-button.tsx';
import type { Application, Payment } from './types.ts';

function Applications({ payment }: { payment: Payment }) {
  const all = payment.applications ?? [];
  if (all.length === 0) return <EmptyList>Not applied to an invoice yet. Until then it waits as the payer’s credit.</EmptyList>;
  return (
    <Rows<Application>
      label="What it pays"
      rows={all}
      columns={[
        { label: 'Invoice', show: (one) => <Go resource="invoices" id={one.invoiceId}>{one.invoiceNumber}</Go> },
        { label: 'On', show: (one) => dayText(one.appliedOn) },
        { label: 'Amount', numeric: true, show: (one) => moneyText(one.amountCents) },
        { label: 'Change', show: (one) => one.takenBack || one.amountCents < 0 ? 'Taken back' : iMay('payments', 'edit') ? <TakeBackButton application={one} /> : '–' },
      ]}
    />
  );
}

export const PaymentShow = () => (
  <ShowPage<Payment> title={(payment) => `Payment ${payment.number}`} canEdit={false} actions={(payment) => payment.unappliedCents > 0 && iMay('payments', 'edit') && <ApplyButton payment={payment} />}>
    {(payment) => (
      <>
        <Section title="Payment">
          <Figures figures={[{ label: 'Received', value: moneyText(payment.amountCents) }, { label: 'Applied', value: moneyText(payment.appliedCents) }, { label: 'Credit left', value: moneyText(payment.unappliedCents) }]} />
          <Facts
            facts={[
              ['From', <Go key="payer" resource="payers" id={payment.payerId}>{payment.payerName}</Go>],
              ['To', <Go key="seller" resource="sellers" id={payment.sellerId}>{payment.sellerName}</Go>],
              ['Received on', dayText(payment.receivedOn)],
              ['By', wordFor({ ...METHOD_WORDS, opening: 'Paid before this began' }, payment.method)],
              ['Reference', payment.reference],
              ['Note', payment.note],
            ]}
          />
        </Section>
        <Section title="What it pays"><Applications payment={payment} /></Section>
      </>
    )}
  </ShowPage>
);
