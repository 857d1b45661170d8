import { Button, Dialog, DialogActions, DialogContent, DialogTitle, TextField, Typography } from '@mui/material';
import { useId, useState } from 'react';

/** Competitors would stand too close: the director says why they may, or leaves it. */
export function ReasonDialog({ sentences, onClose, onReason }: { sentences: readonly string[]; onClose: () => void; onReason: (reason: string) => void }) {
  const [reason, setReason] = useState('');
  const titleId = useId();
  return (
    <Dialog open onClose={onClose} aria-labelledby={titleId} fullWidth maxWidth="sm">
      <DialogTitle id={titleId}>Put it there all the same?</DialogTitle>
      <DialogContent>
        {sentences.map((sentence) => <Typography key={sentence} sx={{ mb: 1 }}>{sentence}</Typography>)}
        <TextField label="Why competitors may stand there" value={reason} onChange={(event) => setReason(event.target.value)} required multiline minRows={2} autoFocus helperText="Kept with the read, for whoever asks in spring. It is pinned there." slotProps={{ htmlInput: { maxLength: 300 } }} />
      </DialogContent>
      <DialogActions sx={{ px: 3, pb: 2 }}>
        <Button onClick={onClose}>Do not</Button>
        <Button variant="contained" disabled={reason.trim() === ''} onClick={() => onReason(reason.trim())}>Put it there</Button>
      </DialogActions>
    </Dialog>
  );
}
