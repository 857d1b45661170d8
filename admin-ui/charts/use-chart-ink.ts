import { useTheme } from '@mui/material';
import { CHART_INK, lookOf } from './palette.ts';

/** The colors of a chart on the sheet that is lit now. */
export function useChartInk() {
  const { palette } = useTheme();
  const lit = palette.mode === 'dark' ? 'dark' : 'light';
  return { ink: CHART_INK[lit], paper: palette.background.paper, colorOf: (place: number): string => lookOf(place)[lit] };
}
