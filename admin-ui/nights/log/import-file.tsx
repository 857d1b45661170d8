import { Box, Button, TextField } from '@mui/material';
import { useState } from 'react';
import type { ImportView } from '../../../server/night/log/aside.dto.ts';
import { ask, newKey } from '../../api/http.ts';
import type { Night } from '../types.ts';

const MOST_BYTES = 3_000_000;

/** A file that a device at the table wrote out. */
export function ImportFile({ night, onDone }: { night: Night; onDone: () => void }) {
  const isLate = night.state === 'signedOff';
  const [reason, setReason] = useState('');
  const [answer, setAnswer] = useState<ImportView | null>(null);
  const [failed, setFailed] = useState<string | null>(null);
  const read = async (file: File | undefined) => {
    if (!file) return;
    setAnswer(null);
    setFailed(null);
    try {
      if (file.size > MOST_BYTES) throw new Error('A file may have up to 3 MB.');
      const body = JSON.parse(await file.text()) as object;
      setAnswer(await ask<ImportView>(`/nights/${night.id}/log/import`, { method: 'POST', body: isLate ? { ...body, reason: reason.trim() } : body, idempotencyKey: newKey() }));
      onDone();
    } catch (error) {
      setFailed(error instanceof SyntaxError ? 'This is no file of table entries.' : error instanceof Error ? error.message : 'The file was not taken.');
    }
  };
  return (
    <Box sx={{ my: 1.5 }}>
      {isLate && <TextField label="Why the entries come now" value={reason} onChange={(event) => setReason(event.target.value)} required fullWidth helperText="Needed after sign-off" slotProps={{ htmlInput: { maxLength: 300 } }} sx={{ mb: 1.5 }} />}
      <Button component="label" variant="outlined" role={undefined} tabIndex={-1} disabled={isLate && reason.trim() === ''} sx={{ minHeight: 48, '&:focus-within': { outline: '3px solid', outlineColor: 'secondary.main', outlineOffset: 2 } }}>
        Import entries from a device
        <input type="file" accept=".json,application/json" disabled={isLate && reason.trim() === ''} aria-label="A file of entries from a device" onChange={(event) => { void read(event.target.files?.[0]); event.target.value = ''; }} style={{ position: 'absolute', opacity: 0, width: 1, height: 1 }} />
      </Button>
      {failed && <Box role="alert" sx={{ color: 'error.main', mt: 1 }}>{failed}</Box>}
      {answer && <Box role="status" sx={{ mt: 1 }}>{answer.sentence}</Box>}
      {answer?.results.filter((one) => one.sentence).map((one) => <Box key={one.id} sx={{ color: 'text.secondary' }}>{one.sentence}</Box>)}
    </Box>
  );
}
