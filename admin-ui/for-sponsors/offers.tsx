import { Box, Typography } from '@mui/material';
import type { OfferToSponsor } from './types.ts';
import { useWritten } from './written.tsx';

/** What was put to the sponsor; the answer is given by talking to the school. */
export function Offers({ offers }: { offers: readonly OfferToSponsor[] }) {
  const { day, money } = useWritten();
  return (
    <>
      {offers.map(({ id, title, number, priceCents, lapsesOn, lines }) => (
        <Box component="article" key={id} sx={{ mb: 2, breakInside: 'avoid' }}>
          <Typography variant="h3" sx={{ overflowWrap: 'anywhere' }}>{title}</Typography>
          <Typography>{money(priceCents)}{number ? ` · offer ${number}` : ''} · good until {day(lapsesOn)}</Typography>
          {lines.length > 0 && <Box component="ul" sx={{ m: 0, pl: 2.5 }}>{lines.map((line) => <li key={line}>{line}</li>)}</Box>}
        </Box>
      ))}
      <Typography sx={{ color: 'text.secondary' }}>To take one up, call the school.</Typography>
    </>
  );
}
