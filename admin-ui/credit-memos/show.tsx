import { Go } from '../fields/go.tsx';
import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { SendButton } from '../letters/send-button.tsx';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { RefundButton } from '../payments/refund-button.tsx';
import { TakeBackButton } from '../payments/take-back-button.tsx';
import type { Application } from '../payments/types.ts';
import { iMay } from '../session/rights.ts';
import { Facts } from '../show/facts.tsx';
import { Figures } from '../show/figures.tsx';
import { Section } from '../show/section.tsx';
import { ShowPage } from '../show/show-page.tsx';
import { numberText } from '../words/count.ts';
import { ApplyMemoButton } from './apply-button.tsx';
import { CreditMemoPdf } from './pdf-link.tsx';
import type { CreditMemo, CreditMemoLine } from './types.ts';

const Actions = ({ memo }: { memo: CreditMemo }) => (
  <>
    {memo.unappliedCents > 0 && iMay('payments', 'edit') && <ApplyMemoButton memo={memo} />}
    {memo.unappliedCents > 0 && iMay('payments', 'edit') && <RefundButton path={`/credit-memos/${memo.id}/refunds`} leftCents={memo.unappliedCents} payerName={memo.payerName} />}
    <CreditMemoPdf memo={memo} />
    <SendButton label="Send…" which={{ kind: 'creditMemo', aboutId: memo.id }} />
  </>
);

const Lines = ({ memo }: { memo: CreditMemo }) => (
  <Rows<CreditMemoLine>
    label="What is credited"
    rows={memo.lines ?? []}
    columns={[
      { label: 'For', show: (line) => line.description },
      { label: 'Invoice', show: (line) => (line.invoiceId ? <Go resource="invoices" id={line.invoiceId}>{line.invoiceNumber}</Go> : '–') },
      { label: 'Count', numeric: true, show: (line) => numberText(line.quantity) },
      { label: 'Each', numeric: true, show: (line) => (line.unitCents === null ? '–' : moneyText(line.unitCents)) },
      { label: 'Tax', numeric: true, show: (line) => moneyText(line.taxCents) },
      { label: 'Amount', numeric: true, show: (line) => moneyText(line.amountCents) },
    ]}
  />
);

function Uses({ memo }: { memo: CreditMemo }) {
  const all = memo.applications ?? [];
  if (all.length === 0) return <EmptyList>Not applied to an invoice. Until then it waits as the payer’s credit.</EmptyList>;
  return (
    <Rows<Application>
      label="What it pays"
      rows={all}
      columns={[
        { label: 'Invoice', show: (one) => <Go resource="invoices" id={one.invoiceId}>{one.invoiceNumber}</Go> },
        { label: 'On', show: (one) => dayText(one.appliedOn) },
        { label: 'Amount', numeric: true, show: (one) => moneyText(one.amountCents) },
        { label: 'Change', show: (one) => (one.takenBack ? 'Taken back' : iMay('payments', 'edit') ? <TakeBackButton application={one} /> : '–') },
      ]}
    />
  );
}

export const CreditMemoShow = () => (
  <ShowPage<CreditMemo> title={(memo) => `Credit memo ${memo.number}`} canEdit={false} actions={(memo) => <Actions memo={memo} />}>
    {(memo) => (
      <>
        <Section title="Credit memo">
          <Figures
            figures={[
              { label: 'Net', value: moneyText(memo.netCents) }, { label: 'Tax', value: moneyText(memo.taxCents) }, { label: 'Credited', value: moneyText(memo.grossCents) },
              { label: 'Applied', value: moneyText(memo.appliedCents) }, { label: 'Credit left', value: moneyText(memo.unappliedCents) },
            ]}
          />
          <Facts
            facts={[
              ['To', <Go key="payer" resource="payers" id={memo.payerId}>{memo.payerName}</Go>],
              ['From', <Go key="seller" resource="sellers" id={memo.sellerId}>{memo.sellerName}</Go>],
              ['Contract', memo.contractId && <Go key="contract" resource="contracts" id={memo.contractId}>{[memo.contractNumber, memo.contractTitle].filter(Boolean).join(', ')}</Go>],
              ['Issued on', dayText(memo.issuedOn)],
              ['Why', memo.reason],
              ['Paid back', memo.refundedCents > 0 ? moneyText(memo.refundedCents) : null],
            ]}
          />
        </Section>
        <Section title="What is credited" lead="Reads are credited at the value they have in the contract, with the tax that was charged on them. The business office decides how it is booked elsewhere."><Lines memo={memo} /></Section>
        <Section title="What it pays"><Uses memo={memo} /></Section>
      </>
    )}
  </ShowPage>
);
