import { Box, Button, Dialog, DialogActions, DialogContent, DialogTitle, Typography } from '@mui/material';
import { useId, useState } from 'react';
import { QrCode } from '../fields/qr-code.tsx';
import type { NewCalendarFeed } from './types.ts';

/** The address of a new calendar: shown once, because only its hash is kept. */
export function AddressDialog({ feed, onClose }: { feed: NewCalendarFeed; onClose: () => void }) {
  const titleId = useId();
  const [said, setSaid] = useState('');
  const address = new URL(feed.address, window.location.origin).href;
  const subscribing = address.replace(/^https?:/, 'webcal:');
  const copy = () => {
    // Where a page comes over plain http there is no clipboard at all.
    const done = navigator.clipboard ? navigator.clipboard.writeText(address) : Promise.reject(new Error('no clipboard'));
    done.then(() => setSaid('The address is copied.'), () => setSaid('This browser does not let a page copy here. Select the address and copy it by hand.'));
  };
  return (
    <Dialog open onClose={(_, reason) => reason === 'escapeKeyDown' && onClose()} aria-labelledby={titleId} fullWidth maxWidth="sm">
      <DialogTitle id={titleId}>The calendar for {feed.label}</DialogTitle>
      <DialogContent>
        <Typography sx={{ mb: 2 }}>
          {feed.calendar === 'nights'
            ? 'Send it only to people who work the nights: whoever has it sees who is needed and when. It is shown this once; if it gets out, revoke it and make a new one.'
            : 'Put it on the school’s website or send it to families. It is shown this once; if it gets lost, make a new one.'}
        </Typography>
        <Box sx={{ display: 'flex', flexWrap: 'wrap', gap: 2, alignItems: 'center', mb: 2 }}>
          <QrCode text={subscribing} title="Square to be read by a phone’s camera: subscribes to the calendar" size={176} />
          <Typography component="div" sx={{ flex: '1 1 200px', minWidth: 0 }}>
            On a phone, point the camera at the square. In a calendar program, look for “Subscribe to a calendar” or “Add a calendar from the internet” and paste the address.
          </Typography>
        </Box>
        <Box component="output" aria-label="Address of the calendar" sx={{ display: 'block', p: 1.5, bgcolor: 'background.default', border: 1, borderColor: 'divider', borderRadius: 1, overflowWrap: 'anywhere', userSelect: 'all', fontFamily: 'monospace' }}>
          {address}
        </Box>
        <Box sx={{ display: 'flex', flexWrap: 'wrap', gap: 1, mt: 1.5 }}>
          <Button variant="outlined" onClick={copy}>Copy the address</Button>
          <Button variant="outlined" href={subscribing}>Subscribe on this device</Button>
        </Box>
        <Box role="status" sx={{ mt: 1, minHeight: 28 }}>{said}</Box>
      </DialogContent>
      <DialogActions sx={{ px: 3, pb: 2 }}>
        <Button onClick={onClose} variant="contained">Done</Button>
      </DialogActions>
    </Dialog>
  );
}
