import { Typography } from '@mui/material';
import type { ReactNode } from 'react';
import type { Paper } from '../books/download-buttons.tsx';
import { ReportTable } from '../books/report-table.tsx';
import { BarsChart } from '../charts/bars-chart.tsx';
import { ChartWithTable } from '../charts/chart-with-table.tsx';
import { Go } from '../fields/go.tsx';
import { moneyText } from '../format/money.ts';
import { count } from '../words/count.ts';
import { DRAWN, MEANINGS, dollarsText, figureColumns, hasDollars } from './columns.ts';
import type { IncomeBoardView, IncomeFigures, IncomeOfSchool, IncomeOfTeam } from './types.ts';

/** More bars than this are no picture any more; the table has them all. */
const MOST_BARS = 12;

interface Split<Line> {
  title: string;
  label: string;
  lines: readonly Line[];
  nameOf: (line: Line) => string;
  show: (line: Line) => ReactNode;
  keyOf: (line: Line) => string;
  total: IncomeFigures;
  note: string;
  files: readonly Paper[];
}

function SplitChart<Line extends IncomeFigures>({ title, label, lines, nameOf, show, keyOf, total, note, files }: Split<Line>) {
  const told = lines.filter(hasDollars);
  const most = told.toSorted((one, other) => other.earned + other.signed - one.earned - one.signed).slice(0, MOST_BARS);
  if (told.length === 0) return null;
  return (
    <ChartWithTable
      title={title}
      summary={`${note}${told.length > MOST_BARS ? ` The chart shows the ${MOST_BARS} with the most.` : ''}`}
      chart={<BarsChart isLying labels={most.map(nameOf)} valueText={dollarsText} series={DRAWN.map(({ column, label: name }) => ({ name, values: most.map((line) => line[column]) }))} />}
      table={<ReportTable<Line> label={title} rows={told} keyOf={keyOf} columns={[{ label, show }, ...figureColumns(MEANINGS, total)]} />}
      files={files}
    />
  );
}

const NO_TEAM = 'No team';

export function IncomeByTeamChart({ view, files }: { view: IncomeBoardView; files: readonly Paper[] }) {
  const manySeasons = new Set(view.teams.flatMap((line) => line.seasonName ?? [])).size > 1;
  const nameOf = ({ teamName, seasonName }: IncomeOfTeam) => (teamName === null ? NO_TEAM : manySeasons ? `${teamName} ${seasonName}` : teamName);
  return (
    <SplitChart
      title="By team" label="Team" lines={view.teams} total={view.total} files={files} nameOf={nameOf} keyOf={(line) => line.teamId ?? 'none'}
      show={(line) => <TeamName line={line} />}
      note="A read earns for the teams of its game. Prices, invoices and payments go evenly to the teams that the contract names, else to the teams whose games it covers. What belongs to none of them, such as a banner alone or a bank fee, stands by itself."
    />
  );
}

const TeamName = ({ line }: { line: IncomeOfTeam }) =>
  line.teamId === null ? (
    <>{NO_TEAM}</>
  ) : (
    <>
      <Go resource="teams" id={line.teamId}>{line.teamName}</Go>
      <Typography component="span" sx={{ display: 'block', color: 'text.secondary', fontSize: '0.9rem', fontWeight: 400 }}>{line.schoolName}, {line.seasonName}</Typography>
    </>
  );

export function IncomeBySchoolChart({ view, files }: { view: IncomeBoardView; files: readonly Paper[] }) {
  const schools = view.schools.filter((line) => line.schoolId !== null && hasDollars(line));
  return (
    <SplitChart
      title="By school" label="School" lines={view.schools} total={view.total} files={files} nameOf={(line) => line.schoolName ?? 'No school'} keyOf={(line) => line.schoolId ?? 'none'}
      show={(line) => <SchoolName line={line} />}
      note={`The teams of ${count(schools.length, 'school')}, added up${schools.length === 1 ? ` (${schools[0]!.schoolName}, ${moneyText(schools[0]!.signed)} signed)` : ''}.`}
    />
  );
}

const SchoolName = ({ line }: { line: IncomeOfSchool }) =>
  line.schoolId === null ? (
    <>No school</>
  ) : (
    <>
      <Go resource="schools" id={line.schoolId}>{line.schoolName}</Go>
      {line.accountCode && <Typography component="span" sx={{ display: 'block', color: 'text.secondary', fontSize: '0.9rem', fontWeight: 400 }}>Account code {line.accountCode}</Typography>}
    </>
  );
