import { Box } from '@mui/material';
import { useState } from 'react';
import { useServer } from '../api/use-server.ts';
import { Pick } from '../books/pickers.tsx';
import { ReportTable } from '../books/report-table.tsx';
import { BarsChart } from '../charts/bars-chart.tsx';
import { ChartWithTable, chartFiles } from '../charts/chart-with-table.tsx';
import { monthText } from '../format/day.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Reading } from '../show/reading.tsx';
import { Section } from '../show/section.tsx';
import { count, numberText } from '../words/count.ts';
import type { InventoryView, PlacesOfMonth } from './types.ts';

const ALL = 'all';
const SERIES = [['Given', 'given'], ['Sold', 'sold'], ['Held by offers', 'held'], ['Left', 'left'], ['Went unused', 'unused']] as const;
type Named = Exclude<keyof PlacesOfMonth, 'month' | 'readKindId'>;

function summaryOf(rows: readonly PlacesOfMonth[], kind: string, view: InventoryView): string {
  const sum = (of: Named) => rows.reduce((total, row) => total + row[of], 0);
  const waiting = view.unplaced.filter(({ readKindId }) => kind === ALL || readKindId === kind).reduce((total, { reads }) => total + reads, 0);
  const told = `${count(sum('given'), 'read')} given, ${numberText(sum('sold'))} sold with a place, ${numberText(sum('held'))} held by offers, ${numberText(sum('left'))} places left and ${numberText(sum('unused'))} gone unused`;
  return `${told.replace(/^./, (first) => first.toUpperCase())}.${waiting > 0 ? ` ${count(waiting, 'promised read')} ${waiting === 1 ? 'has' : 'have'} no place yet.`.replace(/^ ./, (first) => first.toUpperCase()) : ''}`;
}

function Shown({ view }: { view: InventoryView }) {
  const [kind, setKind] = useState(ALL);
  const rows = view.months.filter(({ readKindId }) => (readKindId ?? ALL) === kind);
  const sum = (of: Named) => numberText(rows.reduce((total, row) => total + row[of], 0));
  const figure = (label: string, of: Named) => ({ label, numeric: true, show: (row: PlacesOfMonth) => numberText(row[of]), sum: sum(of) });
  if (rows.length === 0) return <EmptyList>{view.seasonName ?? 'The season'} has no announced home game yet, so it has no places.</EmptyList>;
  return (
    <>
      <Box sx={{ mb: 2 }}><Pick label="Read kind" value={kind} choices={[{ id: ALL, name: 'All kinds together' }, ...view.kinds.map(({ readKindId, readKindName }) => ({ id: readKindId, name: readKindName }))]} onChange={(id) => setKind(id || ALL)} /></Box>
      <ChartWithTable
        level="h3"
        title={kind === ALL ? 'Places by month' : `Places for ${view.kinds.find(({ readKindId }) => readKindId === kind)?.readKindName} by month`}
        summary={summaryOf(rows, kind, view)}
        chart={<BarsChart isStacked labels={rows.map(({ month }) => monthText(month))} series={SERIES.map(([name, of]) => ({ name, values: rows.map((row) => row[of]) }))} valueText={numberText} />}
        table={
          <ReportTable<PlacesOfMonth>
            label="Places by month"
            rows={rows}
            keyOf={({ month }) => month}
            columns={[{ label: 'Month', show: ({ month }) => monthText(month) }, figure('Home games', 'games'), figure('Places', 'places'), ...SERIES.map(([label, of]) => figure(label, of))]}
          />
        }
        files={chartFiles('/boards/inventory', `seasonId=${view.seasonId}`, 'places-sold-and-left')}
      />
    </>
  );
}

/** Sold and left, month by month, the months that are over among them. */
export function InventoryBoard({ seasonId }: { seasonId: string }) {
  const view = useServer<InventoryView>(`/boards/inventory?seasonId=${seasonId}`);
  return (
    <Section title="Sold and left" lead="All places of the season. Kinds share places: what is left of one is gone once another is sold there. Held are the places that the plan keeps for open offers.">
      <Reading of={view}>{(data) => <Shown view={data} />}</Reading>
    </Section>
  );
}
