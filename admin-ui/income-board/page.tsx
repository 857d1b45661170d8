import { Box, Typography } from '@mui/material';
import { useServer } from '../api/use-server.ts';
import { ASK_THE_OFFICE, ReportPage } from '../books/report-page.tsx';
import { useAsked } from '../books/use-asked.ts';
import { chartFiles } from '../charts/chart-with-table.tsx';
import { monthText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Figures } from '../show/figures.tsx';
import { Section } from '../show/section.tsx';
import { count } from '../words/count.ts';
import { OtherSellers, PaidInGoods } from './apart.tsx';
import { IncomeByMonth } from './by-month.tsx';
import { IncomeBySchoolChart, IncomeByTeamChart } from './by-whom.tsx';
import { MEANINGS, hasDollars, hasGoods } from './columns.ts';
import { IncomePickers } from './pickers.tsx';
import type { IncomeBoardView, IncomeTable } from './types.ts';

const STANDARDS = 'Clubs and private schools go by ASC 606, public districts by the GASB.';

export function IncomeBoardPage() {
  const { asked, query, change } = useAsked(['sellerId', 'over', 'seasonId', 'year']);
  const report = useServer<IncomeBoardView>(`/boards/income?${query}`);
  const files = (table: IncomeTable) => chartFiles('/boards/income', `${query ? `${query}&` : ''}table=${table}`, `income-${table}`);
  return (
    <ReportPage
      title="Income"
      lead={<>What sponsors signed for, what was billed of it, what was earned, and what came in. {ASK_THE_OFFICE} {STANDARDS}</>}
      papers={[]}
      report={report}
      pickers={<IncomePickers asked={asked} view={report.data} change={change} />}
    >
      {(view) => <Board view={view} files={files} />}
    </ReportPage>
  );
}

function Board({ view, files }: { view: IncomeBoardView; files: (table: IncomeTable) => ReturnType<typeof chartFiles> }) {
  return (
    <>
      {!hasDollars(view.total) && !hasGoods(view.total) && view.months.every((month) => !hasDollars(month)) ? (
        <EmptyList>Nothing was signed, billed, earned or collected by {view.sellerName} for {view.over === 'season' ? view.title : `the ${view.title.toLowerCase()}`}. It begins with the first contract that is signed.</EmptyList>
      ) : (
        <>
          <Figures figures={MEANINGS.map(({ column, label }) => ({ label, value: moneyText(view.total[column]) }))} />
          <HowFar view={view} />
          <IncomeByMonth view={view} files={files('months')} />
          <IncomeByTeamChart view={view} files={files('teams')} />
          <IncomeBySchoolChart view={view} files={files('schools')} />
          <PaidInGoods view={view} />
          <Meanings />
        </>
      )}
      <OtherSellers view={view} files={files('sellers')} />
    </>
  );
}

/** In the middle of a year the figures are those of a part of it, and a season's money comes before and after its games. */
function HowFar({ view: { over, title, monthsToCome, months } }: { view: IncomeBoardView }) {
  const last = months.at(-1);
  if (over === 'season') return <Typography sx={{ mb: 2 }}>Everything that belongs to contracts of {title}, whatever the day: much is billed before its first game, and some is paid after its last. Collected is here what its own invoices were paid; money that is not applied to one belongs to no season.</Typography>;
  if (monthsToCome === 0 || !last) return null;
  return <Typography sx={{ mb: 2 }}>Through {monthText(last.month)}; {count(monthsToCome, 'month')} of the {over === 'fiscalYear' ? 'fiscal' : 'school'} year {monthsToCome === 1 ? 'is' : 'are'} still to come.</Typography>;
}

const Meanings = () => (
  <Section title="What each word means">
    <Box component="dl" sx={{ m: 0, display: 'grid', gridTemplateColumns: { xs: '1fr', sm: 'max-content 1fr' }, columnGap: 2, rowGap: { xs: 0, sm: 0.5 }, maxWidth: '90ch' }}>
      {MEANINGS.map(({ column, label, means }) => (
        <Box key={column} sx={{ display: 'contents' }}>
          <Box component="dt" sx={{ fontWeight: 600 }}>{label}</Box>
          <Box component="dd" sx={{ m: 0, mb: { xs: 1, sm: 0 }, color: 'text.secondary' }}>{means}</Box>
        </Box>
      ))}
    </Box>
  </Section>
);
