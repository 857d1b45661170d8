import { Box } from '@mui/material';
import { Link } from 'react-router';
import { dayText } from '../format/day.ts';
import { count } from '../words/count.ts';
import type { InvoiceLine } from './types.ts';

/** What a line bills, and where that comes from: the nights of its reads, or the game. */
export function LineText({ line }: { line: InvoiceLine }) {
  const nights = line.nights ?? [];
  const gameId = line.tracedTo?.['gameId'];
  return (
    <>
      {typeof gameId === 'string' ? <Link to={`/games/${gameId}/show`}>{line.description}</Link> : line.description}
      {nights.length > 0 && (
        <Box component="details" sx={{ '& summary': { cursor: 'pointer', minHeight: 44, display: 'list-item', py: 1.25 } }}>
          <summary>Given on {count(nights.length, 'night')}</summary>
          <Box component="ul" sx={{ m: 0, pl: 2.5 }}>
            {nights.map((night) => (
              <Box component="li" key={night.id} sx={{ py: 0.5 }}>
                <Link to={`/nights/${night.id}/show`}>{night.title ? `${dayText(night.heldOn)}, ${night.title}` : dayText(night.heldOn)}</Link>, {count(night.reads, 'read')}
              </Box>
            ))}
          </Box>
        </Box>
      )}
    </>
  );
}
