import { Typography, useMediaQuery } from '@mui/material';
import type { Theme } from '@mui/material';
import { ReportTable } from '../books/report-table.tsx';
import { BarsChart } from '../charts/bars-chart.tsx';
import { ChartWithTable } from '../charts/chart-with-table.tsx';
import type { Paper } from '../books/download-buttons.tsx';
import { monthText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { department } from '../session/me.ts';
import { DRAWN, MEANINGS, dollarsText, figureColumns, hasDollars } from './columns.ts';
import type { IncomeBoardView, IncomeOfMonth } from './types.ts';

const shortMonth = (month: string): string => {
  const [year, number] = month.split('-').map(Number);
  const of = (style: Intl.DateTimeFormatOptions) => new Intl.DateTimeFormat(department().locale, { ...style, timeZone: 'UTC' }).format(Date.UTC(year!, number! - 1, 1));
  return `${of({ month: 'short' })} ’${of({ year: '2-digit' })}`;
};

/** The months of the time asked for, in dollars. On a phone the bars lie, and a month of nothing takes no room. */
export function IncomeByMonth({ view, files }: { view: IncomeBoardView; files: readonly Paper[] }) {
  const isNarrow = useMediaQuery((theme: Theme) => theme.breakpoints.down('sm'));
  const drawn = isNarrow ? view.months.filter(hasDollars) : view.months;
  const { total } = view;
  return (
    <ChartWithTable
      title="By month"
      summary={`${view.sellerName}, ${view.over === 'season' ? view.title : view.title.toLowerCase()}: ${DRAWN.map(({ column, label }) => `${label.toLowerCase()} ${moneyText(total[column])}`).join(', ')}.`}
      chart={<BarsChart labels={drawn.map(({ month }) => shortMonth(month))} isLying={isNarrow} valueText={dollarsText} series={DRAWN.map(({ column, label }) => ({ name: label, values: drawn.map((line) => line[column]) }))} />}
      table={<MonthTable view={view} />}
      files={files}
    />
  );
}

function MonthTable({ view }: { view: IncomeBoardView }) {
  const isOfTwo = view.fiscalYears.length > 0;
  return (
    <>
      <ReportTable<IncomeOfMonth>
        label="Income by month" rows={view.months} keyOf={(line) => line.month}
        columns={[
          { label: 'Month', show: (line) => monthText(line.month) },
          ...(isOfTwo ? [{ label: 'Fiscal year', show: (line: IncomeOfMonth) => String(line.fiscalYear) }] : []),
          ...figureColumns(MEANINGS, view.total),
        ]}
      />
      {isOfTwo && (
        <>
          <Typography sx={{ mt: 2, mb: 1 }}>These months lie in {view.fiscalYears.length === 2 ? 'two fiscal years' : `${view.fiscalYears.length} fiscal years`}; the books close each by itself.</Typography>
          <ReportTable label="Income by fiscal year" rows={view.fiscalYears} keyOf={(line) => String(line.fiscalYear)} columns={[{ label: 'Fiscal year', show: (line) => String(line.fiscalYear) }, ...figureColumns(MEANINGS, view.total)]} />
        </>
      )}
    </>
  );
}
