import { Box, Paper, Typography } from '@mui/material';
import type { ReactNode } from 'react';

/** A sheet of the page with its own heading. */
export function Section({ title, lead, actions, children }: { title: string; lead?: ReactNode; actions?: ReactNode; children: ReactNode }) {
  return (
    <Paper component="section" variant="outlined" sx={{ p: { xs: 1.5, sm: 2.5 }, mb: 2, minWidth: 0 }}>
      <Box sx={{ display: 'flex', gap: 1.5, flexWrap: 'wrap', justifyContent: 'space-between', alignItems: 'baseline', mb: 1 }}>
        <Typography variant="h2">{title}</Typography>
        {actions && <Box sx={{ display: 'flex', gap: 1, flexWrap: 'wrap' }}>{actions}</Box>}
      </Box>
      {lead && <Typography sx={{ color: 'text.secondary', mb: 1.5, maxWidth: '70ch' }}>{lead}</Typography>}
      {children}
    </Paper>
  );
}
