import { Box, Button } from '@mui/material';
import { useState } from 'react';
import { useRefresh } from 'react-admin';
import { ask } from '../../api/http.ts';
import { errorsOf } from '../../api/command.ts';
import { PlanView } from '../../imports/plan-view.tsx';
import type { ImportPlan } from '../../imports/types.ts';
import type { HonoursList } from './types.ts';

const MOST_BYTES = 2 * 1024 * 1024;

/** Students from a file: read, shown row by row, and stored only when confirmed. */
export function FileSheet({ list }: { list: HonoursList }) {
  const [csv, setCsv] = useState('');
  const [plan, setPlan] = useState<ImportPlan | null>(null);
  const [working, setWorking] = useState(false);
  const [failed, setFailed] = useState<string | null>(null);
  const refresh = useRefresh();
  const send = async (text: string, confirm: string | false) => {
    setWorking(true);
    try {
      const answer = await ask<ImportPlan>(`/honours-lists/${list.id}/import`, { method: 'POST', body: { csv: text, confirm } });
      setFailed(null);
      setPlan(answer);
      if (answer.done) refresh();
      return undefined;
    } catch (error) {
      const errors = errorsOf(error) as { root?: { serverError?: string } };
      if (confirm === false) {
        setPlan(null);
        setFailed(errors.root?.serverError ?? 'The file cannot be read.');
      }
      return errors;
    } finally {
      setWorking(false);
    }
  };
  const read = async (file: File | undefined) => {
    if (!file) return;
    if (file.size > MOST_BYTES) return setFailed('A file may have up to 2 MB.');
    const text = await file.text();
    setCsv(text);
    await send(text, false);
  };
  return (
    <Box sx={{ my: 1.5 }}>
      <Button component="label" variant="outlined" role={undefined} tabIndex={-1} sx={{ '&:focus-within': { outline: '3px solid', outlineColor: 'secondary.main', outlineOffset: 2 } }}>
        Students from a file
        <input type="file" accept=".csv,text/csv" aria-label={`A file of students for ${list.title}`} onChange={(event) => { void read(event.target.files?.[0]); event.target.value = ''; }} style={{ position: 'absolute', opacity: 0, width: 1, height: 1 }} />
      </Button>
      <Box sx={{ color: 'text.secondary', mt: 0.5, overflowWrap: 'anywhere' }}>A CSV file with the columns Student, Escorts, Order, One line; only the first is needed.</Box>
      {failed && <Box role="alert" sx={{ color: 'error.main' }}>{failed}</Box>}
      {plan && <PlanView plan={plan} working={working} onConfirm={() => send(csv, plan.planDigest)} />}
    </Box>
  );
}
