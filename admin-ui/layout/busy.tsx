import { Box, LinearProgress } from '@mui/material';
import { useLoading } from 'react-admin';

/** A thin line while anything is read or sent for more than half a second. */
export function Busy() {
  const busy = useLoading();
  return (
    <Box sx={{ position: 'fixed', top: 60, left: 0, right: 0, zIndex: 1200, height: 4 }}>
      {busy && <LinearProgress aria-label="Working" color="secondary" sx={{ opacity: 0, animation: 'busy 0s linear 0.5s forwards', '@keyframes busy': { to: { opacity: 1 } } }} />}
    </Box>
  );
}
