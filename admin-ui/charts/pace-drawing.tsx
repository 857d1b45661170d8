import { Box } from '@mui/material';
import { ChartsReferenceLine } from '@mui/x-charts/ChartsReferenceLine';
import { LineChart, lineClasses } from '@mui/x-charts/LineChart';
import { department } from '../session/me.ts';
import { numberText } from '../words/count.ts';
import { PACE_HEIGHT } from './drawing.tsx';
import { Legend } from './legend.tsx';
import { paceLines, type PaceProps } from './pace.ts';
import { lookOf } from './palette.ts';
import { useChartInk } from './use-chart-ink.ts';

const NAMES = ['Given', 'Expected by then'];
const momentOf = (day: string): Date => new Date(`${day}T00:00:00Z`);
const onAxis = (at: Date): string => new Intl.DateTimeFormat(department().locale, { day: 'numeric', month: 'short', timeZone: 'UTC' }).format(at);

export default function PaceDrawing(props: PaceProps) {
  const { days, expected, given } = paceLines(props);
  const { colorOf, ink } = useChartInk();
  const words = { tickLabelStyle: { fontSize: 13, fill: ink.words } };
  const first = days[0]!;
  const last = days.at(-1)!;
  const isWithin = first <= props.today && props.today <= last;
  const line = (place: number, data: (number | null)[]) => ({ id: `${place}`, label: NAMES[place]!, data, color: colorOf(place), curve: 'stepAfter' as const, strictStepCurve: true, showMark: days.length <= 30, shape: lookOf(place).mark, valueFormatter: (value: number | null) => (value === null ? 'not played yet' : numberText(value)) });
  return (
    <Box>
      <Legend names={NAMES} as="lines" />
      <LineChart
        height={PACE_HEIGHT}
        xAxis={[{ ...words, id: 'days', scaleType: 'utc', data: days.map(momentOf), height: 28, tickNumber: 5, valueFormatter: (at: Date) => onAxis(at) }]}
        yAxis={[{ ...words, id: 'reads', min: 0, width: 'auto', tickMinStep: 1, tickNumber: 5, valueFormatter: (value: number) => numberText(value) }]}
        series={[line(0, given), line(1, expected)]}
        grid={{ horizontal: true }}
        margin={{ top: 22, right: 24, bottom: 4, left: 4 }}
        hideLegend
        skipAnimation
        disableKeyboardNavigation
        sx={{ [`& .${lineClasses.line}`]: { strokeWidth: 2.5 }, [`& .${lineClasses.line}[data-series="1"]`]: { strokeDasharray: lookOf(1).dash } }}
      >
        {isWithin && <ChartsReferenceLine x={momentOf(props.today)} label="Today" labelAlign="start" spacing={{ x: 4, y: -16 }} lineStyle={{ stroke: ink.today, strokeWidth: 2, strokeDasharray: '4 3' }} labelStyle={{ fontSize: 13, fontWeight: 600, fill: ink.today }} />}
      </LineChart>
    </Box>
  );
}
