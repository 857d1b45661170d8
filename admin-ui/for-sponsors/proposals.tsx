import { Alert, Box, Button, Paper, TextField, Typography } from '@mui/material';
import { useQueryClient } from '@tanstack/react-query';
import { useRef, useState } from 'react';
import { ask, newKey } from '../api/http.ts';
import { useNameOfAnswerer } from './name-of-answerer.ts';
import { sentenceOf } from './sentence-of.ts';
import { useThePage } from './the-page.tsx';
import type { Proposal, ProposalsOnPage } from './types.ts';
import { useWritten } from './written.tsx';

const PATH = '/sponsor-page/proposals';

/** What the school puts to the sponsor for reads it missed; yes or no, with a name. */
export function OpenProposal({ proposal }: { proposal: Proposal }) {
  const client = useQueryClient();
  const { page: { today }, say } = useThePage();
  const { day } = useWritten();
  const key = useRef(newKey());
  const [name, setName] = useNameOfAnswerer();
  const [note, setNote] = useState('');
  const [problem, setProblem] = useState<string | null>(null);
  const [working, setWorking] = useState(false);
  const isLate = proposal.answerBy !== null && today > proposal.answerBy;
  const send = async (answer: 'accept' | 'decline') => {
    if (name.trim() === '') return setProblem('Write your name, so that the school knows who answered.');
    setWorking(true);
    await ask<ProposalsOnPage>(`${PATH}/${proposal.id}/answer`, { method: 'POST', body: { name, answer, ...(note.trim() ? { note } : {}) }, idempotencyKey: key.current }).then(async (next) => {
      client.setQueryData(['server', PATH], next);
      say(answer === 'accept' ? 'Thank you. It is agreed.' : 'Thank you. The school knows that you would rather not.');
      await client.invalidateQueries({ queryKey: ['server'] });
    }, (error: unknown) => {
      key.current = newKey();
      setProblem(sentenceOf(error));
    });
    setWorking(false);
  };
  return (
    <Paper component="article" variant="outlined" sx={{ p: { xs: 2, sm: 3 }, mb: 3, breakInside: 'avoid' }}>
      <Typography variant="h3">For what we missed: {proposal.words}</Typography>
      <Typography sx={{ color: 'text.secondary', overflowWrap: 'anywhere' }}>{proposal.contractTitle}.{proposal.answerBy ? ` Please answer by ${day(proposal.answerBy)}.` : ''}</Typography>
      <Missed proposal={proposal} />
      {isLate ? (
        <Alert severity="info" icon={false} sx={{ mt: 2 }}>The day to answer is over. Call the school, and it is put to you anew.</Alert>
      ) : (
        <Box component="form" noValidate onSubmit={(event) => { event.preventDefault(); void send('accept'); }} sx={{ display: 'grid', gap: 1.5, mt: 2, displayPrint: 'none' }}>
          <TextField label="Your name" value={name} onChange={(event) => setName(event.target.value)} required autoComplete="name" fullWidth slotProps={{ htmlInput: { maxLength: 120 } }} />
          <TextField label="A word to the school (optional)" value={note} onChange={(event) => setNote(event.target.value)} multiline minRows={2} fullWidth slotProps={{ htmlInput: { maxLength: 500 } }} />
          {problem && <Alert severity="error" role="alert">{problem}</Alert>}
          <Box sx={{ display: 'flex', gap: 1.5, flexWrap: 'wrap' }}>
            <Button type="submit" variant="contained" disabled={working} sx={tall}>{working ? 'Sending…' : 'Accept'}</Button>
            <Button variant="outlined" disabled={working} onClick={() => void send('decline')} sx={tall}>Decline</Button>
          </Box>
        </Box>
      )}
    </Paper>
  );
}

const tall = { minHeight: 52, flex: { xs: '1 1 100%', sm: '0 1 auto' }, px: 3 } as const;

function Missed({ proposal: { missed } }: { proposal: Proposal }) {
  const { night, day } = useWritten();
  return (
    <Box component="ul" sx={{ m: 0, mt: 1, pl: 2.5 }}>
      {missed.map((read, place) => (
        <li key={place}>
          {[night(read.missedOn), read.gameLabel, read.windowName, read.why].filter(Boolean).join(' · ')}
          {read.settledOn ? ` · made good on ${day(read.settledOn)}` : ''}
        </li>
      ))}
    </Box>
  );
}

const STANDINGS: Record<Proposal['standing'], string> = {
  open: 'Waiting for your answer', waitingForAnswer: 'Waiting for your answer', toBePlaced: 'Agreed, still to come', toBeGiven: 'Agreed, still to come', waitingForContract: 'Agreed, for the next contract',
  settled: 'Done', declined: 'Declined', withdrawn: 'Withdrawn',
};

/** What was agreed or declined before, and what became of it. */
export function AnsweredProposals({ proposals }: { proposals: readonly Proposal[] }) {
  const { day } = useWritten();
  return (
    <>
      {proposals.map((proposal) => (
        <Box component="article" key={proposal.id} sx={{ borderTop: 1, borderColor: 'divider', py: 1.5, breakInside: 'avoid' }}>
          <Typography sx={{ fontWeight: 600 }}>{proposal.words}</Typography>
          <Typography>{STANDINGS[proposal.standing]}.{proposal.answeredOn ? ` ${proposal.answer === 'decline' ? 'Declined' : 'Accepted'}${proposal.answeredByName ? ` by ${proposal.answeredByName}` : ''} on ${day(proposal.answeredOn)}.` : ''}</Typography>
          <Missed proposal={proposal} />
        </Box>
      ))}
    </>
  );
}
