import { Alert, Box, Button, Dialog, DialogActions, DialogContent, DialogTitle, Typography } from '@mui/material';
import { useId, useState } from 'react';

/** The address of a new link: shown once, because only its hash is kept. */
export function AddressDialog({ address, onClose }: { address: string; onClose: () => void }) {
  const titleId = useId();
  const [copied, setCopied] = useState<'no' | 'yes' | 'failed'>('no');
  const copy = () => navigator.clipboard.writeText(address).then(() => setCopied('yes'), () => setCopied('failed'));
  return (
    <Dialog open onClose={onClose} aria-labelledby={titleId} fullWidth maxWidth="sm">
      <DialogTitle id={titleId}>The link is ready</DialogTitle>
      <DialogContent>
        <Typography sx={{ mb: 1.5 }}>Send it to the sponsor by e-mail or text. It is shown this once; if it gets lost, revoke it and make a new one.</Typography>
        <Box component="output" aria-label="Address of the link" sx={{ display: 'block', p: 1.5, bgcolor: 'background.default', border: 1, borderColor: 'divider', borderRadius: 1, overflowWrap: 'anywhere', userSelect: 'all', fontFamily: 'monospace' }}>
          {address}
        </Box>
        <Box role="status" sx={{ mt: 1, minHeight: 28 }}>
          {copied === 'yes' && 'Copied.'}
          {copied === 'failed' && <Alert severity="warning" icon={false}>This browser does not let a page copy here. Select the address and copy it by hand.</Alert>}
        </Box>
      </DialogContent>
      <DialogActions sx={{ px: 3, pb: 2 }}>
        <Button onClick={() => void copy()} variant="outlined">Copy the address</Button>
        <Button onClick={onClose} variant="contained">Done</Button>
      </DialogActions>
    </Dialog>
  );
}
