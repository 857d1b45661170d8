import { Box, useMediaQuery } from '@mui/material';
import type { Theme } from '@mui/material';
import { BarChart, barClasses } from '@mui/x-charts/BarChart';
import { ChartsText, type ChartsTextProps } from '@mui/x-charts/ChartsText';
import { useId, useMemo } from 'react';
import { BarPattern } from './bar-pattern.tsx';
import { LETTERS_BESIDE, shortLabel, type BarsProps } from './bars.ts';
import { heightOfBars } from './drawing.tsx';
import { Legend } from './legend.tsx';
import { lookOf } from './palette.ts';
import { useChartInk } from './use-chart-ink.ts';

export default function BarsDrawing(props: BarsProps) {
  const { labels, series, isStacked = false, isLying = false, valueText = String, most } = props;
  const id = useId();
  const { letters, width } = LETTERS_BESIDE[useMediaQuery((theme: Theme) => theme.breakpoints.up('md')) ? 'wide' : 'narrow'];
  const slots = useMemo(() => (isLying ? { axisTickLabel: (tick: ChartsTextProps) => <LyingWords tick={tick} labels={labels} letters={letters} /> } : {}), [isLying, letters, labels.join('\n')]);
  const { colorOf, paper, ink } = useChartInk();
  const words = { tickLabelStyle: { fontSize: 13, fill: ink.words }, disableLine: false };
  const names = { ...words, id: 'names', scaleType: 'band' as const, data: labels.map((_, place) => place), valueFormatter: (place: number, { location }: { location: string }) => (location !== 'tick' ? labels[place]! : isLying ? `#${place}` : shortLabel(labels[place]!, 9)) };
  const values = { ...words, id: 'values', ...(series.some((one) => one.values.some((value) => (value ?? 0) < 0)) ? {} : { min: 0 }), ...(most === undefined ? {} : { max: most }), tickMinStep: 1, tickNumber: 5, valueFormatter: (value: number) => valueText(value) };
  return (
    <Box>
      {series.length > 1 && <Legend names={series.map(({ name }) => name)} as="bars" />}
      <BarChart
        height={heightOfBars(props)}
        layout={isLying ? 'horizontal' : 'vertical'}
        xAxis={[isLying ? { ...values, height: 28 } : { ...names, height: 44 }]}
        yAxis={[isLying ? { ...names, width } : { ...values, width: 'auto' as const }]}
        series={series.map(({ name, values: data }, place) => ({ id: `${place}`, label: name, data: [...data], color: `url(#${id}-${place})`, valueFormatter: (value: number | null) => (value === null ? 'not known' : valueText(value)), ...(isStacked ? { stack: 'all' } : {}) }))}
        grid={isLying ? { vertical: true } : { horizontal: true }}
        margin={{ top: 8, right: 20, bottom: 4, left: 4 }}
        slots={slots}
        hideLegend
        skipAnimation
        disableKeyboardNavigation
        sx={{ [`& .${barClasses.element}`]: { stroke: paper, strokeWidth: 1 } }}
      >
        <defs>{series.map((one, place) => <BarPattern key={one.name} id={`${id}-${place}`} color={colorOf(place)} pattern={lookOf(place).pattern} paper={paper} />)}</defs>
      </BarChart>
    </Box>
  );
}

/** The tick names its bar by its place, because the library would cut two lines as if they were one; what names none is a number on the other axis. */
function LyingWords({ tick, labels, letters }: { tick: ChartsTextProps; labels: readonly string[]; letters: number }) {
  const { x = 0, y = 0, text, style } = tick;
  if (!text.startsWith('#')) return <ChartsText {...tick} />;
  const lines = shortLabel(labels[Number(text.slice(1))] ?? '', letters).split('\n');
  return (
    <text x={x} y={y} textAnchor="end" dominantBaseline="central" fill={style?.fill} fontSize={13} fontFamily="inherit">
      {lines.map((line, place) => <tspan key={place} x={x} dy={place === 0 ? `${-0.6 * (lines.length - 1)}em` : '1.2em'}>{line}</tspan>)}
    </text>
  );
}
