import { Box, Typography } from '@mui/material';
import type { ReactNode } from 'react';

/** What stands where nothing is yet. */
export function EmptyList({ children, action }: { children: ReactNode; action?: ReactNode }) {
  return (
    <Box sx={{ border: '2px dashed', borderColor: 'divider', borderRadius: 1, p: { xs: 2, sm: 3 } }}>
      <Typography component="div" sx={{ maxWidth: '62ch', fontSize: '1.0625rem' }}>{children}</Typography>
      {action && <Box sx={{ mt: 2 }}>{action}</Box>}
    </Box>
  );
}
