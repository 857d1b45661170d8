import { Box, Typography } from '@mui/material';
import type { ReactNode } from 'react';

/** One part of the page, reached from the list at its head. */
export function Part({ id, title, lead, isOnPaper = true, children }: { id: string; title: string; lead?: ReactNode; isOnPaper?: boolean; children: ReactNode }) {
  return (
    <Box component="section" aria-labelledby={`part-${id}`} sx={{ mt: 5, '@media print': { mt: 3, ...(isOnPaper ? {} : { display: 'none' }) } }}>
      <Typography variant="h2" id={`part-${id}`} tabIndex={-1} sx={{ mb: 1, scrollMarginTop: 16, borderBottom: 2, borderColor: '#f2b134', pb: 0.5, breakAfter: 'avoid', '&:focus': { outline: 'none' } }}>{title}</Typography>
      {lead && <Typography sx={{ color: 'text.secondary', mb: 1.5 }}>{lead}</Typography>}
      {children}
    </Box>
  );
}

/** Scrolls there and says so to a reader that is heard. */
export function goToPart(id: string): void {
  const heading = document.getElementById(`part-${id}`);
  heading?.scrollIntoView();
  heading?.focus({ preventScroll: true });
}
