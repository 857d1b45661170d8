import { Box, Typography } from '@mui/material';
import type { ReactNode } from 'react';

/** Fields side by side where there is room, two on a tablet, one under the other on a phone. */
export function FormGrid({ columns = 2, children }: { columns?: number; children: ReactNode }) {
  return (
    <Box sx={{ display: 'grid', width: '100%', columnGap: 2, gridTemplateColumns: { xs: '1fr', sm: `repeat(${Math.min(columns, 2)}, minmax(0, 1fr))`, md: `repeat(${columns}, minmax(0, 1fr))` }, alignItems: 'start' }}>
      {children}
    </Box>
  );
}

/** A group of fields under a heading, with a sentence of why where it helps. */
export function FormPart({ title, why, children }: { title: string; why?: ReactNode; children: ReactNode }) {
  return (
    <Box component="section" sx={{ width: '100%', mt: 2, pt: 2, borderTop: 1, borderColor: 'divider' }}>
      <Typography variant="h2" sx={{ mb: 0.5 }}>
        {title}
      </Typography>
      {why && <Typography sx={{ color: 'text.secondary', mb: 1.5, maxWidth: '62ch' }}>{why}</Typography>}
      {children}
    </Box>
  );
}
