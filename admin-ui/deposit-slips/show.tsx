import { Go } from '../fields/go.tsx';
import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { Facts } from '../show/facts.tsx';
import { Figures } from '../show/figures.tsx';
import { PaperButton } from '../show/paper-button.tsx';
import { Section } from '../show/section.tsx';
import { ShowPage } from '../show/show-page.tsx';
import { Difference } from './difference.tsx';
import type { DepositSlipLine, WholeDepositSlip } from './types.ts';

function Lines({ slip, method }: { slip: WholeDepositSlip; method: 'check' | 'cash' }) {
  const isCheck = method === 'check';
  const rows = (slip.lines ?? []).filter((line) => (line.method === 'check') === isCheck);
  return (
    <Section title={isCheck ? 'Checks' : 'Cash'}>
      {rows.length === 0 ? (
        <EmptyList>{isCheck ? 'No check on this slip.' : 'No cash on this slip.'}</EmptyList>
      ) : (
        <Rows<DepositSlipLine>
          label={isCheck ? 'Checks' : 'Cash'}
          rows={rows}
          keyOf={(line) => line.paymentId}
          columns={[
            { label: 'Payment', show: (line) => <Go resource="payments" id={line.paymentId}>{line.paymentNumber}</Go> },
            ...(isCheck ? [{ label: 'Check number', show: (line: DepositSlipLine) => line.reference ?? '–' }] : []),
            { label: 'From', show: (line) => line.payerName },
            { label: 'Received', show: (line) => dayText(line.receivedOn) },
            { label: 'Receipt', show: (line) => (line.receiptId ? <Go resource="receipts" id={line.receiptId}>{line.receiptNumber}</Go> : '–') },
            { label: 'Taken by', show: (line) => line.takenByName ?? '–' },
            { label: 'Amount', numeric: true, show: (line) => moneyText(line.amountCents) },
          ]}
        />
      )}
    </Section>
  );
}

/** Cash once where it was as expected, else what was expected, what was counted and the difference. */
function cashFigures({ cashCents, differenceCents }: WholeDepositSlip) {
  if (differenceCents === 0) return [{ label: 'Cash', value: moneyText(cashCents) }];
  return [
    { label: 'Cash expected', value: moneyText(cashCents) },
    { label: 'Cash counted', value: moneyText(cashCents + differenceCents) },
    { label: differenceCents > 0 ? 'Cash over' : 'Cash short', value: moneyText(Math.abs(differenceCents)) },
  ];
}

export const DepositSlipShow = () => (
  <ShowPage<WholeDepositSlip>
    title={(slip) => `Deposit slip ${slip.number}`}
    canEdit={false}
    actions={(slip) => <PaperButton path={`/deposit-slips/${slip.id}/deposit-slip.pdf`} name={`deposit-slip-${slip.number}`} label="Print the slip (PDF)" isFirst />}
  >
    {(slip) => (
      <>
        <Section title="Deposit">
          <Figures figures={[{ label: 'Deposited', value: moneyText(slip.countedCents) }, { label: 'Expected', value: moneyText(slip.expectedCents) }, { label: 'Checks', value: moneyText(slip.checkCents) }, ...cashFigures(slip)]} />
          <Facts
            facts={[
              ['Counted', <Difference key="difference" cents={slip.differenceCents} />],
              ['Seller of record', <Go key="seller" resource="sellers" id={slip.sellerId}>{slip.sellerName}</Go>],
              ['Deposited on', dayText(slip.depositedOn)],
              ['Deposited by', slip.depositedByName],
              ['Note', slip.note],
            ]}
          />
        </Section>
        <Lines slip={slip} method="check" />
        <Lines slip={slip} method="cash" />
      </>
    )}
  </ShowPage>
);
