import { Box } from '@mui/material';
import { BarChart } from '@mui/x-charts/BarChart';
import { useId } from 'react';
import { BarPattern } from './bar-pattern.tsx';
import { shortLabel, type BarsProps } from './bars.ts';
import { heightOfBars } from './drawing.tsx';
import { Legend } from './legend.tsx';
import { lookOf } from './palette.ts';
import { useChartInk } from './use-chart-ink.ts';

export default function BarsDrawing(props: BarsProps) {
  const { labels, series, isStacked = false, isLying = false, valueText = String, most } = props;
  const id = useId();
  const { colorOf, paper, ink } = useChartInk();
  const words = { tickLabelStyle: { fontSize: 13, fill: ink.words }, disableLine: false };
  const names = { ...words, id: 'names', scaleType: 'band' as const, data: labels.map((_, place) => place), valueFormatter: (place: number, { location }: { location: string }) => (location === 'tick' ? shortLabel(labels[place]!, isLying ? 14 : 9) : labels[place]!) };
  const values = { ...words, id: 'values', min: 0, ...(most === undefined ? {} : { max: most }), tickMinStep: 1, tickNumber: 5, valueFormatter: (value: number) => valueText(value) };
  return (
    <Box>
      {series.length > 1 && <Legend names={series.map(({ name }) => name)} as="bars" />}
      <BarChart
        height={heightOfBars(props)}
        layout={isLying ? 'horizontal' : 'vertical'}
        xAxis={[isLying ? { ...values, height: 28 } : { ...names, height: 44 }]}
        yAxis={[isLying ? { ...names, width: 112 } : { ...values, width: 'auto' as const }]}
        series={series.map(({ name, values: data }, place) => ({ id: `${place}`, label: name, data: [...data], color: `url(#${id}-${place})`, valueFormatter: (value: number | null) => (value === null ? 'not known' : valueText(value)), ...(isStacked ? { stack: 'all' } : {}) }))}
        grid={isLying ? { vertical: true } : { horizontal: true }}
        margin={{ top: 8, right: 20, bottom: 4, left: 4 }}
        hideLegend
        skipAnimation
        disableKeyboardNavigation
        sx={{ '& .MuiBarElement-root': { stroke: paper, strokeWidth: 1 } }}
      >
        <defs>{series.map((one, place) => <BarPattern key={one.name} id={`${id}-${place}`} color={colorOf(place)} pattern={lookOf(place).pattern} paper={paper} />)}</defs>
      </BarChart>
    </Box>
  );
}
