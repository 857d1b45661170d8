import { Typography } from '@mui/material';
import { useServer } from '../api/use-server.ts';
import { Go } from '../fields/go.tsx';
import { dayText, today } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { spreadsheets } from './download-buttons.tsx';
import { DayPick, SellerPick } from './pickers.tsx';
import { ASK_THE_OFFICE, ReportPage } from './report-page.tsx';
import { ReportTable, some } from './report-table.tsx';
import type { IncomeLine, IncomeSplitView } from './types.ts';
import { useAsked } from './use-asked.ts';

export function IncomeByTeamPage() {
  const { asked, query, change } = useAsked(['sellerId', 'from', 'to']);
  const report = useServer<IncomeSplitView>(`/reports/income-split?${query}`);
  const to = asked.to ?? today();
  return (
    <ReportPage
      title="Income by team"
      lead={<>What was earned, by the team in whose games the reads were given. What belongs to no game goes evenly to the teams that the contract names, else to the department. {ASK_THE_OFFICE}</>}
      report={report}
      papers={spreadsheets('/reports/income-split', query, `income-by-team-${to}`)}
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
          <EmptyList>Nothing was earned from {dayText(view.from)} through {dayText(view.to)}. Reads earn when their night is signed off.</EmptyList>
        ) : (
          <ReportTable<IncomeLine>
            label="Income by team"
            rows={view.lines}
            keyOf={(line) => line.teamId ?? 'department'}
            columns={[
              { label: 'Team', show: (line) => <TeamName line={line} /> },
              { label: 'School', show: (line) => line.schoolName ?? '–' },
              { label: 'Sponsorship', numeric: true, show: (line) => some(line.sponsorshipCents), sum: some(view.total.sponsorshipCents) },
              { label: 'In kind', numeric: true, show: (line) => some(line.inKindCents), sum: some(view.total.inKindCents) },
              { label: 'Without a read', numeric: true, show: (line) => some(line.unreadCents), sum: some(view.total.unreadCents) },
              { label: 'Allowances', numeric: true, show: (line) => some(line.allowancesCents), sum: some(view.total.allowancesCents) },
              { label: 'In all', numeric: true, show: (line) => moneyText(line.totalCents), sum: moneyText(view.total.totalCents) },
            ]}
          />
        )
      }
    </ReportPage>
  );
}

const TeamName = ({ line }: { line: IncomeLine }) =>
  line.teamId === null ? (
    <>Department</>
  ) : (
    <>
      <Go resource="teams" id={line.teamId}>{line.teamName}</Go>
      <Typography component="span" sx={{ display: 'block', color: 'text.secondary', fontSize: '0.9rem', fontWeight: 400 }}>{line.seasonName}</Typography>
    </>
  );
