import { Alert, Box, Button, TextField } from '@mui/material';
import { useQueryClient } from '@tanstack/react-query';
import { useId, useState } from 'react';
import { ask } from '../api/http.ts';
import { useNameOfAnswerer } from './name-of-answerer.ts';
import { sentenceOf } from './sentence-of.ts';
import { useThePage } from './the-page.tsx';

export interface AskedAbout {
  entryId?: string | null;
  occurrence?: number;
  nightId?: string;
}

/** What may be missed on a night: a line of a contract. */
export interface Kind {
  commitmentId: string;
  name: string;
}

interface Asking {
  about: AskedAbout;
  /** where no read is named: which one may be missing */
  kinds?: readonly Kind[];
}

/** A sponsor who heard it otherwise, or not at all, asks here. */
export function AskAboutRead({ label, names, ...asking }: Asking & { label: string; names: string }) {
  const formId = useId();
  const [isOpen, setOpen] = useState(false);
  return (
    <Box sx={{ displayPrint: 'none' }}>
      <Button variant="text" aria-expanded={isOpen} aria-controls={isOpen ? formId : undefined} aria-label={`${label}: ${names}`} onClick={() => setOpen(!isOpen)} sx={{ px: 0.5 }}>{label}</Button>
      {isOpen && <QuestionForm id={formId} onSent={() => setOpen(false)} {...asking} />}
    </Box>
  );
}

function QuestionForm({ id, about, kinds = [], onSent }: Asking & { id: string; onSent: () => void }) {
  const client = useQueryClient();
  const { say } = useThePage();
  const [commitmentId, setCommitmentId] = useState(kinds[0]?.commitmentId ?? '');
  const [name, setName] = useNameOfAnswerer();
  const [what, setWhat] = useState('');
  const [problem, setProblem] = useState<string | null>(null);
  const [working, setWorking] = useState(false);
  const send = async () => {
    if (name.trim() === '') return setProblem('Write your name, so that the school knows who asks.');
    if (what.trim() === '') return setProblem('Write what you would like to know.');
    setWorking(true);
    await ask('/sponsor-page/questions', { method: 'POST', body: { ...about, ...(kinds.length > 0 ? { commitmentId } : {}), name, what } }).then(async () => {
      onSent();
      say('Thank you. The school has your question; its answer will stand under “Your questions”.');
      await client.invalidateQueries({ queryKey: ['server', '/sponsor-page/questions'] });
      await client.invalidateQueries({ queryKey: ['server', '/sponsor-page/nights'] });
    }, (error: unknown) => {
      setWorking(false);
      setProblem(sentenceOf(error));
    });
  };
  return (
    <Box component="form" id={id} noValidate onSubmit={(event) => { event.preventDefault(); void send(); }} sx={{ display: 'grid', gap: 1, my: 1 }}>
      {kinds.length > 1 && (
        <TextField select label="Which read" value={commitmentId} onChange={(event) => setCommitmentId(event.target.value)} fullWidth slotProps={{ select: { native: true } }}>
          {kinds.map((kind) => <option key={kind.commitmentId} value={kind.commitmentId}>{kind.name}</option>)}
        </TextField>
      )}
      <TextField label="Your name" value={name} onChange={(event) => setName(event.target.value)} required autoComplete="name" fullWidth slotProps={{ htmlInput: { maxLength: 120 } }} />
      <TextField label="What you would like to know" value={what} onChange={(event) => setWhat(event.target.value)} required multiline minRows={2} fullWidth slotProps={{ htmlInput: { maxLength: 1000 } }} />
      {problem && <Alert severity="error" role="alert">{problem}</Alert>}
      <Box><Button type="submit" variant="contained" disabled={working}>{working ? 'Sending…' : 'Send the question'}</Button></Box>
    </Box>
  );
}
