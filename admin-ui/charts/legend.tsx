import { Box } from '@mui/material';
import { useId } from 'react';
import { BarPattern } from './bar-pattern.tsx';
import { lookOf } from './palette.ts';
import { useChartInk } from './use-chart-ink.ts';

interface Props {
  names: readonly string[];
  as: 'bars' | 'lines';
}

/** What each look stands for, in words beside a piece of it. */
export function Legend({ names, as }: Props) {
  return (
    <Box sx={{ display: 'flex', flexWrap: 'wrap', columnGap: 2.5, rowGap: 0.5, mb: 1, fontSize: '0.95rem' }}>
      {names.map((name, place) => (
        <Box key={name} sx={{ display: 'inline-flex', alignItems: 'center', gap: 1 }}>
          {as === 'bars' ? <BarPiece place={place} /> : <LinePiece place={place} />}
          <span>{name}</span>
        </Box>
      ))}
    </Box>
  );
}

function BarPiece({ place }: { place: number }) {
  const id = useId();
  const { colorOf, paper } = useChartInk();
  return (
    <svg width="22" height="16" aria-hidden="true">
      <defs><BarPattern id={id} color={colorOf(place)} pattern={lookOf(place).pattern} paper={paper} /></defs>
      <rect width="22" height="16" fill={`url(#${id})`} stroke={colorOf(place)} />
    </svg>
  );
}

function LinePiece({ place }: { place: number }) {
  const { colorOf } = useChartInk();
  return (
    <svg width="34" height="14" aria-hidden="true">
      <line x1="0" x2="34" y1="7" y2="7" stroke={colorOf(place)} strokeWidth="3" strokeDasharray={lookOf(place).dash} />
    </svg>
  );
}
