import { Box, Button, Table, TableBody, TableCell, TableHead, TableRow, Typography } from '@mui/material';
import { useMemo } from 'react';
import { totalOfAll, totalsOf } from '../../server/domain/planning/board/totals.ts';
import { Tag } from '../fields/tag.tsx';
import { Section } from '../show/section.tsx';
import { count, numberText } from '../words/count.ts';
import type { BoardView } from './types.ts';

/** Reads of a promise that have no place. */
export interface Unplaced {
  promiseId: string;
  sponsorName: string;
  readKindName: string;
  reads: number;
}

/** Reads that are owed and have no place, by promise; what an open offer lacks is planning's. */
function unplacedOf(view: BoardView): Unplaced[] {
  const placed = new Map<string, number>();
  for (const read of view.season.placed) placed.set(read.promiseId, (placed.get(read.promiseId) ?? 0) + 1);
  return view.season.promises.filter((promise) => promise.source !== 'offer').flatMap(({ promiseId, sponsorName, readKindName, slots }) => {
    const reads = slots.reduce((sum, slot) => sum + slot.reads, 0) - (placed.get(promiseId) ?? 0);
    return reads > 0 ? [{ promiseId, sponsorName, readKindName, reads }] : [];
  });
}

/** Owed, planned and at risk, by sponsor and in all; and what still wants a place. */
export function Totals({ view, sponsor, onPlace }: { view: BoardView; sponsor: string; onPlace: ((promise: Unplaced) => void) | null }) {
  const totals = useMemo(() => totalsOf(view.season).filter((total) => !sponsor || total.sponsorId === sponsor), [view.season, sponsor]);
  const all = totalOfAll(totals);
  const unplaced = useMemo(() => unplacedOf(view), [view.season]);
  return (
    <Section title="Owed and planned" lead="Reads still to be given at the games to come. At risk is what has no place.">
      <Table size="small" aria-label="Owed, planned and at risk by sponsor" sx={{ '& td, & th': { px: 0.5, py: 0.75 }, '& th:not(:first-of-type), & td': { textAlign: 'right' } }}>
        <TableHead><TableRow><TableCell component="th">Sponsor</TableCell><TableCell component="th">Owed</TableCell><TableCell component="th">Planned</TableCell><TableCell component="th">At risk</TableCell></TableRow></TableHead>
        <TableBody className="tabular">
          {totals.map((total) => (
            <TableRow key={total.sponsorId}>
              <TableCell component="th" scope="row">{total.sponsorName}</TableCell>
              <TableCell>{numberText(total.owed)}</TableCell><TableCell>{numberText(total.planned)}</TableCell>
              <TableCell>{total.atRisk > 0 ? <Tag mood="care">{numberText(total.atRisk)}</Tag> : '0'}</TableCell>
            </TableRow>
          ))}
          <TableRow sx={{ '& th, & td': { fontWeight: 700, borderTop: 2, borderColor: 'divider' } }}>
            <TableCell component="th" scope="row">All</TableCell>
            <TableCell>{numberText(all.owed)}</TableCell><TableCell>{numberText(all.planned)}</TableCell><TableCell>{numberText(all.atRisk)}</TableCell>
          </TableRow>
        </TableBody>
      </Table>
      {onPlace && unplaced.length > 0 && (
        <Box component="ul" sx={{ listStyle: 'none', p: 0, m: 0, mt: 2 }} aria-label="Reads without a place">
          {unplaced.map((promise) => (
            <Box component="li" key={promise.promiseId} sx={{ display: 'flex', gap: 1, alignItems: 'center', justifyContent: 'space-between', py: 0.5 }}>
              <Typography component="span" sx={{ fontSize: '0.9375rem' }}>{promise.sponsorName}, {promise.readKindName}: {count(promise.reads, 'read')} without a place</Typography>
              <Button variant="outlined" aria-label={`Place a read of ${promise.sponsorName}, ${promise.readKindName}`} onClick={() => onPlace(promise)}>Place…</Button>
            </Box>
          ))}
        </Box>
      )}
    </Section>
  );
}
