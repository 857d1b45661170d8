import { Go } from '../fields/go.tsx';
import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { SendButton } from '../letters/send-button.tsx';
import { iMay } from '../session/rights.ts';
import { Facts } from '../show/facts.tsx';
import { Figures } from '../show/figures.tsx';
import { PaperButton } from '../show/paper-button.tsx';
import { Section } from '../show/section.tsx';
import { ShowPage } from '../show/show-page.tsx';
import { METHOD_WORDS, wordFor } from '../words/choices.ts';
import { ReceiptStateTag } from './state.tsx';
import type { Receipt } from './types.ts';

function Money({ receipt }: { receipt: Receipt }) {
  const sees = iMay('payments', 'show');
  return (
    <Section title="The money" lead="It is a payment of the payer, applied to invoices by somebody else than who took it.">
      <Facts
        facts={[
          ['It is', <ReceiptStateTag key="state" state={receipt.state} />],
          ['Payment', sees ? <Go key="payment" resource="payments" id={receipt.paymentId}>{receipt.paymentNumber}</Go> : receipt.paymentNumber],
          ['Deposit slip', receipt.depositSlipId && (sees ? <Go key="slip" resource="deposit-slips" id={receipt.depositSlipId}>{receipt.depositSlipNumber}</Go> : receipt.depositSlipNumber)],
        ]}
      />
    </Section>
  );
}

export const ReceiptShow = () => (
  <ShowPage<Receipt>
    title={(receipt) => `Receipt ${receipt.number}`}
    canEdit={false}
    actions={(receipt) => (
      <>
        <PaperButton path={`/receipts/${receipt.id}/receipt.pdf`} name={`receipt-${receipt.number}`} label="Print the receipt (PDF)" isFirst />
        <SendButton label="Send…" which={{ kind: 'receipt', aboutId: receipt.id }} />
      </>
    )}
  >
    {(receipt) => (
      <>
        <Section title="Receipt">
          <Figures figures={[{ label: 'Taken', value: moneyText(receipt.amountCents), note: receipt.method === 'check' ? `Check ${receipt.reference ?? ''}` : wordFor(METHOD_WORDS, receipt.method) }]} />
          <Facts
            facts={[
              ['Handed over by', receipt.fromWhom],
              ['Payer', iMay('payers', 'show') ? <Go key="payer" resource="payers" id={receipt.payerId}>{receipt.payerName}</Go> : receipt.payerName],
              ['Seller of record', iMay('sellers', 'show') ? <Go key="seller" resource="sellers" id={receipt.sellerId}>{receipt.sellerName}</Go> : receipt.sellerName],
              ['For', receipt.whatFor],
              ['Taken on', dayText(receipt.takenOn)],
              ['Taken by', receipt.takenByName],
            ]}
          />
        </Section>
        <Money receipt={receipt} />
      </>
    )}
  </ShowPage>
);
