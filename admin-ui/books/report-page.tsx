import { Box, Typography } from '@mui/material';
import type { UseQueryResult } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { Title } from 'react-admin';
import { EmptyList } from '../lists/empty-list.tsx';
import { Go } from '../fields/go.tsx';
import { Reading } from '../show/reading.tsx';
import { DownloadButtons } from './download-buttons.tsx';
import type { Paper } from './download-buttons.tsx';

interface Props<View> {
  title: string;
  lead: ReactNode;
  pickers: ReactNode;
  papers: readonly Paper[];
  report: UseQueryResult<View, Error>;
  children: (view: View) => ReactNode;
}

/** Where revenue is shown, whose rules decide how. */
export const ASK_THE_OFFICE = 'Consult the business office: how revenue is shown in the district’s or the club’s own books is theirs to decide.';

/** A report of the books: what it is, for whom and when, its files, and the figures. */
export function ReportPage<View extends { sellerId?: string | null }>({ title, lead, pickers, papers, report, children }: Props<View>) {
  return (
    <>
      <Title title={title} />
      <Typography sx={{ color: 'text.secondary', mb: 1.5, maxWidth: '75ch' }}>{lead}</Typography>
      <Box sx={{ display: 'flex', gap: { xs: 1, sm: 1.5 }, flexWrap: 'wrap', alignItems: 'center', mb: 2 }}>
        {pickers}
        <Box sx={{ display: 'flex', gap: 1, flexWrap: 'wrap', ml: { md: 'auto' } }}><DownloadButtons papers={papers} /></Box>
      </Box>
      <Reading of={report}>{(view) => (view.sellerId === null ? <EmptyList>No books are kept here yet. They begin with the first <Go to="/sellers">seller of record</Go> whose books are kept here.</EmptyList> : children(view))}</Reading>
    </>
  );
}
