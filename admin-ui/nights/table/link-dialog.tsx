import { Alert, Box, Button, Checkbox, Dialog, DialogActions, DialogContent, DialogTitle, FormControlLabel, Typography } from '@mui/material';
import { useId, useState } from 'react';
import { QrCode } from '../../fields/qr-code.tsx';
import { instantText } from '../../format/instant.ts';
import type { Night } from '../types.ts';
import { HalfPage } from './half-page.tsx';
import type { NewTableLink } from './types.ts';

const asTyped = { display: 'block', p: 1.5, bgcolor: 'background.default', border: 1, borderColor: 'divider', borderRadius: 1, userSelect: 'all', fontFamily: 'monospace' } as const;

/** Copies a text, and says whether it worked. */
function useCopied(): [string, (what: string, text: string) => void] {
  const [said, setSaid] = useState('');
  const copy = (what: string, text: string) => {
    // Where a page comes over plain http there is no clipboard at all.
    const done = navigator.clipboard ? navigator.clipboard.writeText(text) : Promise.reject(new Error('no clipboard'));
    done.then(
      () => setSaid(`${what} is copied.`),
      () => setSaid('This browser does not let a page copy here. Select the text and copy it by hand.'),
    );
  };
  return [said, copy];
}

/** Address and PIN of a new link: shown once, because only their hashes are kept. */
export function LinkDialog({ night, link, onClose }: { night: Night; link: NewTableLink; onClose: () => void }) {
  const titleId = useId();
  const [said, copy] = useCopied();
  const [printsPin, setPrintsPin] = useState(false);
  const address = new URL(link.address, window.location.origin).href;
  return (
    <Dialog open onClose={(_, reason) => reason === 'escapeKeyDown' && onClose()} aria-labelledby={titleId} fullWidth maxWidth="sm">
      <DialogTitle id={titleId}>The link for {link.label}</DialogTitle>
      <DialogContent>
        <Typography sx={{ mb: 2 }}>
          Send the address by e-mail or text and tell the PIN in another way. Both are shown this once; if they get lost, revoke the link and make a new one.
          {link.state === 'early' && ` It opens on ${instantText(link.notBeforeAt)}.`}
        </Typography>
        <Box sx={{ display: 'flex', flexWrap: 'wrap', gap: 2, alignItems: 'center', mb: 2 }}>
          <QrCode text={address} title="Square to be read by a phone’s camera: the address of the link" size={176} />
          <Box sx={{ flex: '1 1 180px', minWidth: 0 }}>
            <Typography component="div" sx={{ color: 'text.secondary' }}>PIN</Typography>
            <Box component="output" aria-label="PIN" sx={{ ...asTyped, fontSize: '2.25rem', fontWeight: 700, letterSpacing: '0.12em', textAlign: 'center' }}>{link.pin}</Box>
          </Box>
        </Box>
        <Box component="output" aria-label="Address of the link" sx={{ ...asTyped, overflowWrap: 'anywhere' }}>{address}</Box>
        <Box sx={{ display: 'flex', flexWrap: 'wrap', gap: 1, mt: 1.5 }}>
          <Button variant="outlined" onClick={() => copy('The address', address)}>Copy the address</Button>
          <Button variant="outlined" onClick={() => copy('The PIN', link.pin)}>Copy the PIN</Button>
        </Box>
        <Box role="status" sx={{ mt: 1, minHeight: 28 }}>{said}</Box>
        <Typography variant="h3" component="h3" sx={{ fontSize: '1.0625rem', mt: 1 }}>On paper</Typography>
        <FormControlLabel control={<Checkbox checked={printsPin} onChange={(_, isOn) => setPrintsPin(isOn)} />} label="Print the PIN on it too" />
        {printsPin && <Alert severity="warning" icon={false} sx={{ mb: 1 }}>Whoever finds this paper can work the table. Hand it over in person.</Alert>}
        <div><Button variant="outlined" onClick={() => window.print()}>Print half a page</Button></div>
        <HalfPage night={night} link={link} address={address} pin={printsPin ? link.pin : null} />
      </DialogContent>
      <DialogActions sx={{ px: 3, pb: 2 }}>
        <Button onClick={onClose} variant="contained">Done</Button>
      </DialogActions>
    </Dialog>
  );
}
