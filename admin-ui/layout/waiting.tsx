import { Box, LinearProgress } from '@mui/material';

/** Shows itself only after half a second, so that what is quick does not flicker. */
export function Waiting({ what = 'Reading' }: { what?: string }) {
  return (
    <Box sx={{ py: 3, opacity: 0, animation: 'waiting 0s linear 0.5s forwards', '@keyframes waiting': { to: { opacity: 1 } } }}>
      <LinearProgress aria-label={what} />
      <Box component="p" sx={{ color: 'text.secondary' }}>{what}…</Box>
    </Box>
  );
}
