import { Box, Typography } from '@mui/material';
import { ChartWithTable } from '../../charts/chart-with-table.tsx';
import { PaceChart } from '../../charts/pace-chart.tsx';
import { Whole } from '../../fields/whole.tsx';
import { dayText } from '../../format/day.ts';
import { EmptyList } from '../../lists/empty-list.tsx';
import { Rows } from '../../lists/rows.tsx';
import { Section } from '../../show/section.tsx';
import { COUNTING_WORDS, wordFor } from '../../words/choices.ts';
import { count, numberText } from '../../words/count.ts';
import type { Fulfillment, LineFulfillment } from './types.ts';
import { forecastText, paceText, standText } from './words.ts';

/** Pace has points for what was played alone, so where the last is of today there is no line to draw between. */
const AFTER_ALL = '9999-12-31';

type Pace = LineFulfillment['pace'][number];

function PaceFigure({ line, asOf }: { line: LineFulfillment; asOf: string }) {
  const last = line.pace.at(-1);
  const empty = line.pace.length === 0 ? <EmptyList>The first point comes with the first game that is played.</EmptyList> : null;
  return (
    <ChartWithTable
      title={`Pace of ${line.readKindName}`}
      level="h3"
      summary={last ? paceText(last) : ''}
      chart={<PaceChart points={line.pace} today={last && last.on >= asOf ? AFTER_ALL : asOf} />}
      table={
        <Rows<Pace>
          label={`Pace of ${line.readKindName} by day`}
          rows={line.pace}
          keyOf={(point) => point.on}
          columns={[
            { label: 'By the end of', show: (point) => <Whole>{dayText(point.on)}</Whole> },
            { label: 'Should have been given', numeric: true, show: (point) => numberText(point.expected) },
            { label: 'Given', numeric: true, show: (point) => numberText(point.given) },
          ]}
        />
      }
      {...(empty ? { empty } : {})}
    />
  );
}

function Floors({ line }: { line: LineFulfillment }) {
  if (line.brokenFloors.length === 0) return null;
  const { least } = line.brokenFloors[0]!;
  return (
    <>
      <Typography variant="h3" sx={{ mt: 2, mb: 1 }}>Games with fewer than {count(least, 'read')}</Typography>
      <Rows<LineFulfillment['brokenFloors'][number]>
        label={`Games with fewer than ${count(least, 'read')} of ${line.readKindName}`}
        rows={line.brokenFloors}
        keyOf={(floor) => floor.gameId}
        columns={[
          { label: 'Game', show: (floor) => floor.label },
          { label: 'Day', show: (floor) => <Whole>{dayText(floor.playedOn)}</Whole> },
          { label: 'At least', numeric: true, show: (floor) => numberText(floor.least) },
          { label: 'Given', numeric: true, show: (floor) => numberText(floor.given) },
        ]}
      />
    </>
  );
}

function Line({ line, asOf }: { line: LineFulfillment; asOf: string }) {
  const { forecast, standing } = line;
  return (
    <Section title={line.readKindName} lead={wordFor(COUNTING_WORDS, line.counting)}>
      <Typography sx={{ maxWidth: '70ch' }}>{standText(line)}</Typography>
      {standing.loggedNotSignedOff > 0 && <Typography sx={{ maxWidth: '70ch' }}>{count(standing.loggedNotSignedOff, 'read')} logged on nights that nobody has signed off yet.</Typography>}
      {line.shortfall > 0 && <Typography sx={{ maxWidth: '70ch' }}>{count(line.shortfall, 'read')} can no longer be given as promised.</Typography>}
      {forecast && (
        <Box sx={{ mt: 1.5, mb: 2 }}>
          <Typography sx={{ maxWidth: '70ch', fontWeight: 600 }}>{forecastText(forecast, standing.owed)}</Typography>
          <Typography sx={{ maxWidth: '70ch', color: 'text.secondary' }}>{forecast.words}</Typography>
        </Box>
      )}
      <PaceFigure line={line} asOf={asOf} />
      <Floors line={line} />
    </Section>
  );
}

/** Each commitment in words, with its pace and what is likely to become of it. */
export function LinesSection({ fulfillment }: { fulfillment: Fulfillment }) {
  return <>{fulfillment.lines.map((line) => <Line key={line.commitmentId} line={line} asOf={fulfillment.asOf} />)}</>;
}
