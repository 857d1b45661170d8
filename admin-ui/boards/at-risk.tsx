import { Box, Typography } from '@mui/material';
import { Title } from 'react-admin';
import { useServer } from '../api/use-server.ts';
import { ReportTable } from '../books/report-table.tsx';
import { useAsked } from '../books/use-asked.ts';
import { BarsChart } from '../charts/bars-chart.tsx';
import { ChartWithTable, chartFiles } from '../charts/chart-with-table.tsx';
import { Go } from '../fields/go.tsx';
import { Tag } from '../fields/tag.tsx';
import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { Figures } from '../show/figures.tsx';
import { Reading } from '../show/reading.tsx';
import { Section } from '../show/section.tsx';
import { count, numberText } from '../words/count.ts';
import { RepairOf } from './repair.tsx';
import { chanceText } from './risk-words.ts';
import { SeasonPick } from './season-pick.tsx';
import type { AtRiskLine, AtRiskView } from './types.ts';

const DRAWN = 12;
const called = ({ sponsorName, readKindName }: AtRiskLine): string => `${sponsorName}: ${readKindName}`;

function Why({ line }: { line: AtRiskLine }) {
  return (
    <Box component="ul" sx={{ m: 0, p: 0, listStyle: 'none' }}>
      {line.risks.map((risk) => (
        <li key={risk}>
          <Tag mood={risk === 'shortfall' ? 'bad' : 'care'}>{whyText(line, risk)}</Tag>
        </li>
      ))}
    </Box>
  );
}

function whyText({ shortfall, heldOn, brokenFloors, behind, chanceAllGiven }: AtRiskLine, risk: AtRiskLine['risks'][number]): string {
  if (risk === 'shortfall') return `${count(shortfall, 'read')} cannot be given as promised`;
  if (risk === 'held') return `On hold since ${dayText(heldOn)}`;
  if (risk === 'floor') return `${count(brokenFloors, 'game')} below the least promised`;
  if (risk === 'behind') return `${count(behind, 'read')} behind`;
  return `Chance of giving all: ${chanceText(chanceAllGiven)}`;
}

const COLUMNS = [
  { label: 'Promise', show: (line: AtRiskLine) => <><Go to={`/contracts/${line.contractId}/show`}>{line.sponsorName}</Go><Box component="span" sx={{ display: 'block', fontWeight: 400 }}>{line.readKindName}{line.contractNumber ? `, ${line.contractNumber}` : ''}</Box></> },
  { label: 'Why', show: (line: AtRiskLine) => <Why line={line} /> },
  { label: 'Given', numeric: true, show: (line: AtRiskLine) => `${numberText(line.given)} of ${numberText(line.promised)}` },
  { label: 'At stake', numeric: true, show: (line: AtRiskLine) => <strong>{moneyText(line.atStakeCents)}</strong> },
  { label: 'Cheapest repair', show: (line: AtRiskLine) => <RepairOf line={line} /> },
] as const;

/** Chances where somebody can tell them; else how far each is behind. */
function Chart({ view, query }: { view: AtRiskView; query: string }) {
  const told = view.lines.filter(({ chanceAllGiven }) => chanceAllGiven !== null);
  const files = chartFiles('/boards/at-risk', query, 'promises-at-risk');
  const table = (
    <ReportTable<AtRiskLine>
      label="Promises at risk"
      rows={view.lines}
      keyOf={(line) => line.commitmentId}
      columns={[
        { label: 'Promise', show: called },
        { label: 'Promised', numeric: true, show: (line) => numberText(line.promised) },
        { label: 'Given', numeric: true, show: (line) => numberText(line.given) },
        { label: 'By now', numeric: true, show: (line) => numberText(line.expectedByNow) },
        { label: 'Planned', numeric: true, show: (line) => numberText(line.planned) },
        { label: 'Cannot be given', numeric: true, show: (line) => numberText(line.shortfall), sum: numberText(view.shortfall) },
        { label: 'Chance of all', numeric: true, show: (line) => chanceText(line.chanceAllGiven) },
        { label: 'At stake', numeric: true, show: (line) => moneyText(line.atStakeCents), sum: moneyText(view.atStakeCents) },
      ]}
    />
  );
  if (told.length === 0) {
    const drawn = view.lines.slice(0, DRAWN);
    return (
      <ChartWithTable
        level="h3" title="Given against what was due by now"
        summary={`${count(view.lines.length, 'promise')} at risk; nobody can tell a chance yet, so given reads stand beside those that were due by now.`}
        chart={<BarsChart isLying labels={drawn.map(called)} series={[{ name: 'Given', values: drawn.map(({ given }) => given) }, { name: 'Due by now', values: drawn.map(({ expectedByNow }) => expectedByNow) }]} valueText={numberText} />}
        table={table}
        files={files}
      />
    );
  }
  const drawn = told.toSorted((one, other) => one.chanceAllGiven! - other.chanceAllGiven!).slice(0, DRAWN);
  const worst = drawn[0]!;
  return (
    <ChartWithTable
      level="h3" title="The chance that all is given"
      summary={`Least likely is ${called(worst)}: ${chanceText(worst.chanceAllGiven).toLowerCase()}.${told.length > DRAWN ? ` The ${DRAWN} least likely of ${told.length} are drawn.` : ''}`}
      chart={<BarsChart isLying most={100} labels={drawn.map(called)} series={[{ name: 'Chance that all is given', values: drawn.map(({ chanceAllGiven }) => Math.round(chanceAllGiven! * 100)) }]} valueText={(value) => `${value} %`} />}
      table={table}
      files={files}
    />
  );
}

function Shown({ view, query }: { view: AtRiskView; query: string }) {
  if (view.seasonId === null) return <EmptyList action={<Go to="/seasons/create">Add a season</Go>}>There is no season yet.</EmptyList>;
  if (view.commitments === 0) return <EmptyList action={<Go to="/contracts">Contracts</Go>}>No contract of {view.seasonName} is signed yet, so nothing is promised that could be at risk.</EmptyList>;
  if (view.lines.length === 0) return <EmptyList>None of the {count(view.commitments, 'promise')} of {view.seasonName} is at risk: none is behind, held or short.</EmptyList>;
  return (
    <>
      <Section title="In all">
        <Figures
          figures={[
            { label: 'Promises at risk', value: numberText(view.lines.length), note: `of ${numberText(view.commitments)}, in ${count(view.contractsAtRisk, 'contract')}` },
            { label: 'At stake', value: moneyText(view.atStakeCents), note: 'not earned, times the chance of missing' },
            { label: 'Reads owed on them', value: numberText(view.owed) },
            { label: 'Cannot be given', value: numberText(view.shortfall), note: 'as they were promised' },
          ]}
        />
      </Section>
      <Section title="What to do, most at stake first">
        <Rows<AtRiskLine> label="Promises at risk and their repairs" rows={view.lines} keyOf={(line) => line.commitmentId} columns={COLUMNS} />
      </Section>
      <Section title="In a chart"><Chart view={view} query={query} /></Section>
    </>
  );
}

/** Commitments that may not be given in full, each with the cheapest thing to do about it. */
export function AtRiskPage() {
  const { asked, query, change } = useAsked(['seasonId']);
  const view = useServer<AtRiskView>(`/boards/at-risk${query && `?${query}`}`);
  return (
    <>
      <Title title="Promises at risk" />
      <Typography sx={{ color: 'text.secondary', mb: 1.5, maxWidth: '75ch' }}>
        What may not be given in full while there is still time. At stake is what nothing has earned yet, times the chance that not all of it is given.
      </Typography>
      <Box sx={{ mb: 2 }}><SeasonPick value={asked.seasonId ?? view.data?.seasonId} onChange={(id) => change('seasonId', id)} /></Box>
      <Reading of={view}>{(data) => <Shown view={data} query={query} />}</Reading>
    </>
  );
}
