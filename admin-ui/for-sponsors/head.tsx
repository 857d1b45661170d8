import { Box, Button, Typography } from '@mui/material';
import { goToPart } from './part.tsx';
import { wholeSentence } from './read-words.ts';
import type { SponsorPage } from './types.ts';
import { useWritten } from './written.tsx';

/** Whose page it is, as of when, and the way to its parts. */
export function Head({ page, parts }: { page: SponsorPage; parts: readonly { id: string; title: string }[] }) {
  const { day } = useWritten();
  const whole = wholeSentence(page.contracts, page.today);
  return (
    <Box component="header" sx={{ mb: 2 }}>
      <Typography variant="h1" sx={{ overflowWrap: 'anywhere' }}>{page.sponsorName}</Typography>
      <Typography sx={{ color: 'text.secondary' }}>at the games of {page.departmentName}</Typography>
      <Typography sx={{ color: 'text.secondary', mb: 1.5 }}>As of {day(page.today)}</Typography>
      {whole && <Typography sx={{ fontSize: '1.1875rem', fontWeight: 600, mb: 2 }}>{whole}</Typography>}
      <Box component="nav" aria-label="On this page" sx={{ display: 'flex', flexWrap: 'wrap', gap: 0.75, displayPrint: 'none' }}>
        {parts.map(({ id, title }) => <Button key={id} variant="outlined" size="small" onClick={() => goToPart(id)} sx={{ minHeight: 38, px: 1.25 }}>{title}</Button>)}
        <Button variant="text" size="small" onClick={() => window.print()} sx={{ minHeight: 38, px: 1.25 }}>Print or save this page</Button>
      </Box>
    </Box>
  );
}
