import { Typography } from '@mui/material';
import { DownloadButtons } from '../books/download-buttons.tsx';
import type { Paper } from '../books/download-buttons.tsx';
import { ReportTable } from '../books/report-table.tsx';
import { Section } from '../show/section.tsx';
import { monthText } from '../format/day.ts';
import { GOODS, MEANINGS, figureColumns, hasGoods } from './columns.ts';
import type { IncomeBoardView, IncomeOfMonth, IncomeOfSeller, IncomeOfTeam } from './types.ts';

/** What is paid in goods is revenue too, but no dollar of it ever comes in. */
export function PaidInGoods({ view }: { view: IncomeBoardView }) {
  if (!hasGoods(view.total)) return null;
  return (
    <Section title="Paid in goods" lead="At the fair value on which both sides agreed. None of it is in the figures above, because no money comes in for it.">
      <ReportTable<IncomeOfMonth> label="Paid in goods, by month" rows={view.months.filter(hasGoods)} keyOf={(line) => line.month} columns={[{ label: 'Month', show: (line) => monthText(line.month) }, ...figureColumns(GOODS, view.total)]} />
      <Typography component="h3" sx={{ mt: 2, mb: 1, fontWeight: 600 }}>By team</Typography>
      <ReportTable<IncomeOfTeam> label="Paid in goods, by team" rows={view.teams.filter(hasGoods)} keyOf={(line) => line.teamId ?? 'none'} columns={[{ label: 'Team', show: (line) => line.teamName ?? 'No team' }, ...figureColumns(GOODS, view.total)]} />
    </Section>
  );
}

export function OtherSellers({ view, files }: { view: IncomeBoardView; files: readonly Paper[] }) {
  if (view.sellers.length < 2) return null;
  return (
    <Section title="Each seller of record" lead="For the same time. Each keeps books of its own, so they are never added up." actions={<DownloadButtons papers={files} />}>
      <ReportTable<IncomeOfSeller> label="Each seller of record" rows={view.sellers} keyOf={(line) => line.sellerId} columns={[{ label: 'Seller of record', show: (line) => line.sellerName }, ...figureColumns([...MEANINGS, ...GOODS])]} />
    </Section>
  );
}
