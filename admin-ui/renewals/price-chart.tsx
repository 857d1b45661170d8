import { Typography } from '@mui/material';
import type { Paper } from '../books/download-buttons.tsx';
import { ReportTable } from '../books/report-table.tsx';
import { BarsChart } from '../charts/bars-chart.tsx';
import { ChartWithTable } from '../charts/chart-with-table.tsx';
import { Go } from '../fields/go.tsx';
import { moneyText } from '../format/money.ts';
import { dollarsText } from '../income-board/columns.ts';
import { count } from '../words/count.ts';
import type { RenewalRow, RenewalsView } from './types.ts';
import { givenText, paidText } from './words.ts';

/** More bars than this are no picture any more; the table has them all. */
const MOST_BARS = 15;

/** What each paid last term beside what the record and the rate card suggest. */
export function PriceChart({ view, files }: { view: RenewalsView; files: readonly Paper[] }) {
  const drawn = view.rows.slice(0, MOST_BARS);
  const left = view.rows.length - drawn.length;
  return (
    <ChartWithTable
      title="Last term and next"
      summary={`${count(view.rows.length, 'contract')} of ${view.seasonName}: ${moneyText(view.priceCents)} last term, ${moneyText(view.suggestedCents)} suggested.${left > 0 ? ` The chart shows the ${MOST_BARS} with the greatest price.` : ''}`}
      chart={<BarsChart isLying labels={drawn.map((row) => row.sponsorName)} valueText={dollarsText} series={[{ name: 'Price last term', values: drawn.map((row) => row.priceCents) }, { name: 'Suggested next', values: drawn.map((row) => row.suggestion.worthCents) }]} />}
      table={<RenewalsTable view={view} />}
      files={files}
    />
  );
}

const RenewalsTable = ({ view }: { view: RenewalsView }) => (
  <ReportTable<RenewalRow>
    label="Renewals"
    rows={view.rows}
    keyOf={(row) => row.contractId}
    columns={[
      { label: 'Sponsor', show: (row) => <Whose row={row} /> },
      { label: 'Price last term', numeric: true, show: (row) => moneyText(row.priceCents), sum: moneyText(view.priceCents) },
      { label: 'Suggested', numeric: true, show: (row) => moneyText(row.suggestion.worthCents), sum: moneyText(view.suggestedCents) },
      { label: 'Nearest package', show: (row) => (row.suggestion.package ? `${row.suggestion.package.name}, ${moneyText(row.suggestion.package.priceCents)}` : '–') },
      { label: 'Reads', show: givenText },
      { label: 'Money', show: paidText },
      { label: 'What follows', show: (row) => row.follows.words },
      { label: 'Whose call', show: (row) => row.callerName ?? '–' },
    ]}
  />
);

const Whose = ({ row }: { row: RenewalRow }) => (
  <>
    <Go resource="contracts" id={row.contractId}>{row.sponsorName}</Go>
    <Typography component="span" sx={{ display: 'block', color: 'text.secondary', fontSize: '0.9rem', fontWeight: 400 }}>{row.title}</Typography>
  </>
);
