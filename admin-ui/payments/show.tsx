import { Alert } from '@mui/material';
import { Go } from '../fields/go.tsx';
import { Tag } from '../fields/tag.tsx';
import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { iMay } from '../session/rights.ts';
import { takenByMe } from '../session/taken-by-me.ts';
import { Facts } from '../show/facts.tsx';
import { Figures } from '../show/figures.tsx';
import { Section } from '../show/section.tsx';
import { ShowPage } from '../show/show-page.tsx';
import { METHOD_WORDS, byWhat, wordFor } from '../words/choices.ts';
import { ApplyButton } from './apply-button.tsx';
import { CameBackButton, MistakeButton } from './came-back-button.tsx';
import { RefundButton } from './refund-button.tsx';
import { TakeBackButton } from './take-back-button.tsx';
import type { Application, Payment, RefundLine } from './types.ts';

const isOver = (payment: Payment): boolean => payment.returnKind !== null || payment.method === 'opening';

function Applications({ payment }: { payment: Payment }) {
  const all = payment.applications ?? [];
  if (all.length === 0) return <EmptyList>{payment.returnKind ? 'It was not applied to an invoice.' : 'Not applied to an invoice yet. Until then it waits as the payer’s credit.'}</EmptyList>;
  return (
    <Rows<Application>
      label="What it pays"
      rows={all}
      columns={[
        { label: 'Invoice', show: (one) => <Go resource="invoices" id={one.invoiceId}>{one.invoiceNumber}</Go> },
        { label: 'On', show: (one) => dayText(one.appliedOn) },
        { label: 'Amount', numeric: true, show: (one) => moneyText(one.amountCents) },
        { label: 'Change', show: (one) => one.takenBack || one.amountCents < 0 ? 'Taken back' : iMay('payments', 'edit') && !isOver(payment) && !takenByMe(payment) ? <TakeBackButton application={one} /> : '–' },
      ]}
    />
  );
}

function RefundSheet({ refunds }: { refunds: RefundLine[] }) {
  if (refunds.length === 0) return null;
  return (
    <Section title="Paid back">
      <Rows<RefundLine>
        label="Refunds of this payment"
        rows={refunds}
        columns={[
          { label: 'On', show: (one) => dayText(one.refundedOn) },
          { label: 'By', show: byWhat },
          { label: 'Amount', numeric: true, show: (one) => moneyText(one.amountCents) },
        ]}
      />
    </Section>
  );
}

/** Where the money lies, and the papers that say so. */
function Whereabouts({ payment }: { payment: Payment }) {
  const { isInDrawer, receiptId, receiptNumber, depositSlipId, depositSlipNumber } = payment;
  if (!isInDrawer && !receiptId && !depositSlipId) return null;
  return (
    <Section title="Where the money is">
      <Facts
        facts={[
          isInDrawer ? ['It is', <Tag key="drawer" mood="care">In the drawer</Tag>] : null,
          ['Receipt', receiptId && (iMay('receipts', 'show') ? <Go key="receipt" resource="receipts" id={receiptId}>{receiptNumber}</Go> : receiptNumber)],
          ['Deposit slip', depositSlipId && (iMay('deposit-slips', 'show') ? <Go key="slip" resource="deposit-slips" id={depositSlipId}>{depositSlipNumber}</Go> : depositSlipNumber)],
        ]}
      />
    </Section>
  );
}

function ReturnNote({ payment }: { payment: Payment }) {
  if (payment.returnKind === null) return null;
  const on = dayText(payment.returnedOn);
  const fee = payment.bankFeeCents ? ` The bank took ${moneyText(payment.bankFeeCents)}.` : '';
  const reason = (payment.returnReason ?? '').replace(/\.*$/, '.');
  return (
    <Alert severity="warning" icon={false} sx={{ mb: 2 }}>
      {payment.returnKind === 'mistake' ? `Recorded by mistake, undone on ${on}: ` : `Came back from the bank on ${on}: `}
      {reason}
      {fee} It pays nothing any more.{' '}
      {payment.chargeInvoiceId && <>The payer was charged for it: <Go resource="invoices" id={payment.chargeInvoiceId}>charge {payment.chargeInvoiceNumber}</Go>.</>}
    </Alert>
  );
}

function Actions({ payment }: { payment: Payment }) {
  if (isOver(payment) || !iMay('payments', 'edit')) return null;
  return (
    <>
      {payment.unappliedCents > 0 && !takenByMe(payment) && <ApplyButton payment={payment} />}
      {payment.unappliedCents > 0 && !takenByMe(payment) && <RefundButton path={`/payments/${payment.id}/refunds`} leftCents={payment.unappliedCents} payerName={payment.payerName} />}
      {payment.refundedCents === 0 && <CameBackButton payment={payment} />}
      {payment.refundedCents === 0 && <MistakeButton payment={payment} />}
    </>
  );
}

export const PaymentShow = () => (
  <ShowPage<Payment> title={(payment) => `Payment ${payment.number}`} canEdit={false} actions={(payment) => <Actions payment={payment} />}>
    {(payment) => (
      <>
        <ReturnNote payment={payment} />
        {payment.unappliedCents > 0 && takenByMe(payment) && <Alert severity="info" icon={false} sx={{ mb: 2 }}>You took this money and wrote its receipt; another applies it or pays it back.</Alert>}
        <Section title="Payment">
          <Figures
            figures={[
              { label: 'Received', value: moneyText(payment.amountCents) },
              { label: 'Applied', value: moneyText(payment.appliedCents) },
              ...(payment.refundedCents > 0 ? [{ label: 'Paid back', value: moneyText(payment.refundedCents) }] : []),
              ...(payment.returnKind === 'returned' ? [{ label: 'Came back', value: moneyText(payment.amountCents) }] : []),
              { label: 'Credit left', value: moneyText(payment.unappliedCents) },
            ]}
          />
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
        <Whereabouts payment={payment} />
        <Section title="What it pays"><Applications payment={payment} /></Section>
        <RefundSheet refunds={payment.refunds ?? []} />
      </>
    )}
  </ShowPage>
);
