import { Typography } from '@mui/material';
import { ROLL_COLUMNS } from '../../server/domain/billing/roll-forward.ts';
import type { RollColumn } from '../../server/domain/billing/roll-forward.ts';
import { useServer } from '../api/use-server.ts';
import { Go } from '../fields/go.tsx';
import { dayText, today } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { spreadsheets } from './download-buttons.tsx';
import { DayPick, SellerPick } from './pickers.tsx';
import { ASK_THE_OFFICE, ReportPage } from './report-page.tsx';
import { ReportTable, some } from './report-table.tsx';
import type { ReportColumn } from './report-table.tsx';
import type { RollForwardLine, RollForwardView } from './types.ts';
import { useAsked } from './use-asked.ts';

const HEADINGS: Record<RollColumn, string> = {
  takenOver: 'Taken over', billed: 'Billed', goodsReceived: 'Goods received', carried: 'Carried over', earned: 'Earned', kept: 'Forfeits, fees, minimums',
  allowed: 'Allowances', credited: 'Credited', voided: 'Voided',
};

/** A column in which nothing moved is left out, save the two that every month has. */
const isShown = (view: RollForwardView, column: RollColumn) => column === 'billed' || column === 'earned' || view.lines.some((line) => line[column] !== 0);

export function UnearnedRevenuePage() {
  const { asked, query, change } = useAsked(['sellerId', 'from', 'to']);
  const report = useServer<RollForwardView>(`/reports/roll-forward?${query}`);
  const to = asked.to ?? today();
  return (
    <ReportPage
      title="Unearned revenue"
      lead={<>What was billed and not earned yet, from an opening to a closing balance, contract by contract. Below zero is what was earned and is not billed yet. {ASK_THE_OFFICE}</>}
      report={report}
      papers={spreadsheets('/reports/roll-forward', query, `unearned-revenue-${to}`)}
      pickers={
        <>
          <SellerPick value={asked.sellerId ?? report.data?.sellerId ?? undefined} onChange={(id) => change('sellerId', id)} />
          <DayPick label="From" value={asked.from ?? report.data?.from} onChange={(day) => change('from', day)} />
          <DayPick label="Through" value={to} onChange={(day) => change('to', day)} />
        </>
      }
    >
      {(view) =>
        view.lines.length === 0 ? (
          <EmptyList>Nothing was billed or earned from {dayText(view.from)} through {dayText(view.to)}, and nothing stood over from before.</EmptyList>
        ) : (
          <ReportTable<RollForwardLine> label="Unearned revenue" rows={view.lines} keyOf={(line) => line.contractId} columns={columnsOf(view)} />
        )
      }
    </ReportPage>
  );
}

function columnsOf(view: RollForwardView): ReportColumn<RollForwardLine>[] {
  const moves = ROLL_COLUMNS.filter((column) => isShown(view, column)).map((column): ReportColumn<RollForwardLine> => ({
    label: HEADINGS[column], numeric: true, show: (line) => some(line[column]), sum: some(view.total[column]),
  }));
  return [
    { label: 'Contract', show: (line) => <Contract line={line} /> },
    { label: 'Opening', numeric: true, show: (line) => some(line.openingCents), sum: some(view.total.openingCents) },
    ...moves,
    { label: 'Closing', numeric: true, show: (line) => moneyText(line.closingCents), sum: moneyText(view.total.closingCents) },
    { label: 'Difference', numeric: true, show: (line) => some(line.differenceCents), sum: some(view.total.differenceCents) },
  ];
}

const Contract = ({ line }: { line: RollForwardLine }) => (
  <>
    <Go resource="contracts" id={line.contractId}>{line.contractTitle}</Go>
    <Typography component="span" sx={{ display: 'block', color: 'text.secondary', fontSize: '0.9rem', fontWeight: 400 }}>{[line.contractNumber, line.sponsorName].filter(Boolean).join(', ')}</Typography>
  </>
);
