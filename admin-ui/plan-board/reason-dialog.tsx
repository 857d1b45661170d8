import { Button, Dialog, DialogActions, DialogContent, DialogTitle, Typography } from '@mui/material';
import { useId, useState } from 'react';
import { CompetitorReason } from './competitor-reason.tsx';

/** Competitors would stand too close: the director says why they may, or leaves it. */
export function ReasonDialog({ sentences, onClose, onReason }: { sentences: readonly string[]; onClose: () => void; onReason: (reason: string) => void }) {
  const [reason, setReason] = useState('');
  const titleId = useId();
  return (
    <Dialog open onClose={onClose} aria-labelledby={titleId} fullWidth maxWidth="sm">
      <DialogTitle id={titleId}>Put it there all the same?</DialogTitle>
      <DialogContent>
        {sentences.map((sentence) => <Typography key={sentence} sx={{ mb: 1 }}>{sentence}</Typography>)}
        <CompetitorReason value={reason} onChange={setReason} isFirst />
      </DialogContent>
      <DialogActions sx={{ px: 3, pb: 2 }}>
        <Button onClick={onClose}>Do not</Button>
        <Button variant="contained" disabled={reason.trim() === ''} onClick={() => onReason(reason.trim())}>Put it there</Button>
      </DialogActions>
    </Dialog>
  );
}
