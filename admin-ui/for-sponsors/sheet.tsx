import { Alert, Paper, Typography } from '@mui/material';
import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { useServer } from '../api/use-server.ts';
import { ApprovedWords } from './approved-words.tsx';
import type { SponsorPage } from './types.ts';
import { WaitingWords } from './waiting-words.tsx';

const PATH = '/sponsor-page';

/** Everything of one sponsor that can be read and answered here. */
export function SponsorSheet() {
  const client = useQueryClient();
  const [said, setSaid] = useState<string | null>(null);
  const page = useServer<SponsorPage>(PATH);
  if (page.error) {
    return (
      <>
        <Typography variant="h1" sx={{ mb: 1.5 }}>This link does not open</Typography>
        <Alert severity="error" role="alert">{page.error.message}</Alert>
      </>
    );
  }
  if (!page.data) return <Typography role="status">Reading…</Typography>;
  const { sponsorName, departmentName, copies, locale } = page.data;
  const answered = (next: SponsorPage, sentence: string) => {
    client.setQueryData(['server', PATH], next);
    setSaid(sentence);
  };
  const waiting = copies.flatMap((copy) => copy.waiting.map((words) => ({ copy, words })));
  const approved = copies.flatMap((copy) => copy.approved.map((words) => ({ copy, words })));
  return (
    <>
      <Typography variant="h1" sx={{ overflowWrap: 'anywhere' }}>{sponsorName}</Typography>
      <Typography sx={{ color: 'text.secondary', mb: 2 }}>at the games of {departmentName}</Typography>
      <div role="status">{said && <Alert severity="success" sx={{ mb: 2 }}>{said}</Alert>}</div>
      <Typography variant="h2" sx={{ mb: 1 }}>{waiting.length === 0 ? 'Nothing waits for you' : 'Waiting for your answer'}</Typography>
      {waiting.length === 0 && <Typography sx={{ mb: 3 }}>When there are new words to read, you find them here.</Typography>}
      {waiting.map(({ copy, words }) => (
        <Paper key={words.id} component="article" variant="outlined" sx={{ p: { xs: 2, sm: 3 }, mb: 3 }}>
          <WaitingWords title={copy.title} kind={copy.readKindName} words={words} locale={locale} onAnswered={answered} />
        </Paper>
      ))}
      {approved.length > 0 && <Typography variant="h2" sx={{ mb: 1 }}>Approved before</Typography>}
      {approved.map(({ copy, words }) => <ApprovedWords key={words.id} title={copy.title} isStopped={copy.isStopped} words={words} locale={locale} />)}
    </>
  );
}
