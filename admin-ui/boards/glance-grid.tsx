import { Box, Paper, Table, TableBody, TableCell, TableContainer, TableHead, TableRow, useMediaQuery, type Theme } from '@mui/material';
import { useEffect, useRef } from 'react';
import { Go } from '../fields/go.tsx';
import { dayText } from '../format/day.ts';
import { CellWords } from './glance-cell.tsx';
import { GLANCE_WORDS, ROWS } from './glance-words.ts';
import type { GlanceNightView } from './types.ts';

const STAYS = { position: 'sticky', left: 0, zIndex: 2, minWidth: 150, boxShadow: (theme: Theme) => `inset -1px 0 0 ${theme.palette.divider}` } as const;
const nightWords = (night: GlanceNightView): string => `${dayText(night.heldOn, 'weekday')}, ${night.label}`;

/** Nights across, what each has to have down; on a phone a card a night. */
export function GlanceGrid({ nights }: { nights: readonly GlanceNightView[] }) {
  const isSmall = useMediaQuery<Theme>((theme) => theme.breakpoints.down('md'));
  return isSmall ? <NightCards nights={nights} /> : <NightColumns nights={nights} />;
}

function NightColumns({ nights }: { nights: readonly GlanceNightView[] }) {
  const box = useRef<HTMLDivElement>(null);
  const next = useRef<HTMLTableCellElement>(null);
  useEffect(() => {
    if (box.current && next.current) box.current.scrollLeft = next.current.offsetLeft - 320;
  }, [nights]);
  const nextId = nights.find(({ isOver }) => !isOver)?.nightId;
  return (
    <TableContainer component={Paper} variant="outlined" ref={box} tabIndex={0} role="region" aria-label="Nights of the season" sx={{ position: 'relative' }}>
      <Table size="small">
        <TableHead>
          <TableRow>
            <TableCell sx={{ ...STAYS, zIndex: 3 }}>What it needs</TableCell>
            {nights.map((night) => (
              <TableCell key={night.nightId} ref={night.nightId === nextId ? next : undefined} sx={{ minWidth: 140, whiteSpace: 'normal', verticalAlign: 'bottom', ...(night.nightId === nextId && { borderLeft: '3px solid', borderLeftColor: 'warning.main' }) }}>
                {night.nightId === nextId && <Box component="span" sx={{ display: 'block', color: 'warning.main' }}>Next</Box>}
                <Go to={`/nights/${night.nightId}/show`}>{dayText(night.heldOn, 'weekday')}</Go>
                <Box component="span" sx={{ display: 'block', fontWeight: 400, overflowWrap: 'anywhere' }}>{night.label}</Box>
              </TableCell>
            ))}
          </TableRow>
        </TableHead>
        <TableBody>
          {ROWS.map((row) => (
            <TableRow key={row}>
              <TableCell component="th" scope="row" sx={{ ...STAYS, backgroundColor: 'background.paper', fontWeight: 600 }}>{GLANCE_WORDS[row]}</TableCell>
              {nights.map((night) => (
                <TableCell key={night.nightId} sx={{ verticalAlign: 'top', ...(night.nightId === nextId && { borderLeft: '3px solid', borderLeftColor: 'warning.main' }) }}>
                  <CellWords cell={night.cells[row]} of={`${GLANCE_WORDS[row]}, ${nightWords(night)}`} />
                </TableCell>
              ))}
            </TableRow>
          ))}
        </TableBody>
      </Table>
    </TableContainer>
  );
}

function NightCards({ nights }: { nights: readonly GlanceNightView[] }) {
  return (
    <Box component="ul" aria-label="Nights of the season" sx={{ listStyle: 'none', m: 0, p: 0, display: 'grid', gap: 1.5, gridTemplateColumns: { xs: '1fr', sm: '1fr 1fr' } }}>
      {nights.map((night) => (
        <Paper key={night.nightId} component="li" variant="outlined" sx={{ p: 1.5, minWidth: 0 }}>
          <Box sx={{ fontWeight: 700, mb: 0.5, overflowWrap: 'anywhere' }}><Go to={`/nights/${night.nightId}/show`}>{nightWords(night)}</Go></Box>
          <Box component="dl" sx={{ m: 0, display: 'grid', gridTemplateColumns: 'minmax(7rem, auto) 1fr', columnGap: 1.5, rowGap: 0.25, alignItems: 'baseline' }}>
            {ROWS.filter((row) => night.cells[row].state !== 'none').map((row) => (
              <Box key={row} sx={{ display: 'contents' }}>
                <Box component="dt" sx={{ color: 'text.secondary' }}>{GLANCE_WORDS[row]}</Box>
                <Box component="dd" sx={{ m: 0 }}><CellWords cell={night.cells[row]} of={`${GLANCE_WORDS[row]}, ${nightWords(night)}`} /></Box>
              </Box>
            ))}
          </Box>
        </Paper>
      ))}
    </Box>
  );
}
