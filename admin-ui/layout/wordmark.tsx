import { Box } from '@mui/material';
import { Link } from 'react-router';
import { BAR } from '../theme/palette.ts';

/** Two rafters and the line they hold. */
export function Wordmark() {
  return (
    <Box component={Link} to="/" sx={{ display: 'inline-flex', alignItems: 'center', gap: 1, minHeight: 44, color: BAR.ink, textDecoration: 'none', fontWeight: 700, fontSize: '1.25rem', '&:focus-visible': { outlineColor: BAR.amber } }}>
      <svg width="34" height="26" viewBox="0 0 34 26" aria-hidden="true">
        <path d="M2 14 17 3l15 11" fill="none" stroke={BAR.ink} strokeWidth="3" strokeLinecap="round" strokeLinejoin="round" />
        <path d="M3 22h28" stroke={BAR.amber} strokeWidth="3.5" strokeLinecap="round" />
      </svg>
      Rafterline
    </Box>
  );
}
