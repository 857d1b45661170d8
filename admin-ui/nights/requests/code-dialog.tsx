import { Box, Button, Dialog, DialogActions, DialogContent, DialogTitle, Typography } from '@mui/material';
import { useId } from 'react';
import { QrCode } from '../../fields/qr-code.tsx';
import type { Night } from '../types.ts';
import { LobbyPage } from './lobby-page.tsx';

/** The code of the public form: shown once, because only the hash of its address is kept. */
export function CodeDialog({ night, address, onClose }: { night: Night; address: string; onClose: () => void }) {
  const titleId = useId();
  return (
    <Dialog open onClose={(_, reason) => reason === 'escapeKeyDown' && onClose()} aria-labelledby={titleId} fullWidth maxWidth="sm">
      <DialogTitle id={titleId}>The code of the form</DialogTitle>
      <DialogContent>
        <Typography sx={{ mb: 2 }}>Print it now: it is shown this once. It stays good while you close the form and open it again; a new code ends it.</Typography>
        <Box sx={{ display: 'grid', justifyItems: 'center', gap: 1.5 }}>
          <QrCode text={address} title="Square to be read by a phone’s camera: the address of the form" size={220} />
          <Box component="output" aria-label="Address of the form" sx={{ overflowWrap: 'anywhere', userSelect: 'all', fontFamily: 'monospace' }}>{address}</Box>
        </Box>
        <LobbyPage night={night} address={address} />
      </DialogContent>
      <DialogActions sx={{ px: 3, pb: 2 }}>
        <Button variant="outlined" onClick={() => window.print()}>Print the page for the lobby</Button>
        <Button variant="contained" onClick={onClose}>Done</Button>
      </DialogActions>
    </Dialog>
  );
}
