import { Alert, Box, Button, TextField, Typography } from '@mui/material';
import { useState } from 'react';
import { ask } from '../api/http.ts';
import { sentenceOf } from './sentence-of.ts';
import { daysWords, Spoken } from './spoken.tsx';
import type { SponsorPage, WordsOfSponsor } from './types.ts';
import { useWritten } from './written.tsx';

interface Props {
  title: string;
  kind: string;
  words: WordsOfSponsor;
  onAnswered: (page: SponsorPage, sentence: string) => void;
}

/** Words to answer: yes with a name, or what should change. */
export function WaitingWords({ title, kind, words, onAnswered }: Props) {
  const written = useWritten();
  const [name, setName] = useState('');
  const [note, setNote] = useState('');
  const [wantsChange, setChange] = useState(false);
  const isChange = wantsChange || words.isHeldBack;
  const [problem, setProblem] = useState<string | null>(null);
  const [working, setWorking] = useState(false);
  const send = async () => {
    if (name.trim() === '') return setProblem('Write your name, so that the school knows who answered.');
    if (isChange && note.trim() === '') return setProblem('Write what should change.');
    setWorking(true);
    const path = `/sponsor-page/versions/${words.id}/${isChange ? 'ask-for-change' : 'approve'}`;
    const thanks = isChange ? 'Thank you. The school has your note and will send new words.' : `Thank you. “${title}” is approved.`;
    await ask<SponsorPage>(path, { method: 'POST', body: isChange ? { name, note } : { name } }).then((page) => {
      setProblem(null);
      setChange(false);
      setNote('');
      onAnswered(page, thanks);
    }, (error: unknown) => setProblem(sentenceOf(error)));
    setWorking(false);
  };
  return (
    <>
      <Typography variant="h3">{title}</Typography>
      <Typography sx={{ color: 'text.secondary' }}>{kind}. {daysWords(words, written)}</Typography>
      <Spoken texts={words.texts} />
      {words.changeNote && <Alert severity="info" icon={false} sx={{ my: 1.5 }}>{words.changeAskedByName} asked for a change: “{words.changeNote}” The school has not sent new words yet.</Alert>}
      {words.isHeldBack && <Alert severity="info" icon={false} sx={{ my: 1.5 }}>The school is still looking at these words and will send others. You can already write what you would like.</Alert>}
      <Box component="form" noValidate onSubmit={(event) => { event.preventDefault(); void send(); }} sx={{ display: 'grid', gap: 1.5, mt: 2, displayPrint: 'none' }}>
        <TextField label="Your name" value={name} onChange={(event) => setName(event.target.value)} required autoComplete="name" fullWidth slotProps={{ htmlInput: { maxLength: 120 } }} />
        {isChange && <TextField label="What should change" value={note} onChange={(event) => setNote(event.target.value)} required multiline minRows={3} fullWidth slotProps={{ htmlInput: { maxLength: 1000 } }} />}
        {problem && <Alert severity="error" role="alert">{problem}</Alert>}
        <Answers isChange={isChange} isHeldBack={words.isHeldBack} working={working} onChange={setChange} />
      </Box>
    </>
  );
}

function Answers({ isChange, isHeldBack, working, onChange }: { isChange: boolean; isHeldBack: boolean; working: boolean; onChange: (isChange: boolean) => void }) {
  const tall = { minHeight: 52, flex: { xs: '1 1 100%', sm: '0 1 auto' }, px: 3 } as const;
  if (isChange) {
    return (
      <Box sx={{ display: 'flex', gap: 1.5, flexWrap: 'wrap' }}>
        <Button type="submit" variant="contained" disabled={working} sx={tall}>{working ? 'Sending…' : 'Send the note'}</Button>
        {!isHeldBack && <Button variant="outlined" sx={tall} onClick={() => onChange(false)}>Back</Button>}
      </Box>
    );
  }
  return (
    <Box sx={{ display: 'flex', gap: 1.5, flexWrap: 'wrap' }}>
      <Button type="submit" variant="contained" disabled={working} sx={tall}>{working ? 'Sending…' : 'Approve these words'}</Button>
      <Button variant="outlined" sx={tall} onClick={() => onChange(true)}>Ask for a change</Button>
    </Box>
  );
}
