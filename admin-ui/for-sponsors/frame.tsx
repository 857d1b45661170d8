import { Box, GlobalStyles } from '@mui/material';
import type { ReactNode } from 'react';
import { BAR } from '../theme/palette.ts';

/** On paper everything is smaller, and the paper is white. */
const ON_PAPER = { '@media print': { html: { fontSize: '11.5px' }, 'html, body': { backgroundColor: '#fff !important' } } } as const;

/** A calm page with nothing around it but the name of the product. */
export function Frame({ children }: { children: ReactNode }) {
  return (
    <Box sx={{ minHeight: '100vh', bgcolor: 'background.default', color: 'text.primary', '@media print': { bgcolor: '#fff' } }}>
      <GlobalStyles styles={ON_PAPER} />
      <Box component="header" sx={{ bgcolor: BAR.ground, color: BAR.ink, borderBottom: `4px solid ${BAR.amber}`, px: { xs: 2, sm: 4 }, py: 1.25, fontWeight: 700, fontSize: '1.125rem', '@media print': { bgcolor: '#fff', color: '#000', px: 0, py: 0.5 } }}>
        Rafterline
      </Box>
      <Box component="main" sx={{ maxWidth: 720, mx: 'auto', px: { xs: 2, sm: 4 }, py: { xs: 2.5, sm: 4 }, '@media print': { maxWidth: 'none', p: 0 } }}>
        {children}
      </Box>
    </Box>
  );
}
