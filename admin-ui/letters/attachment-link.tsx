import { Button } from '@mui/material';
import { useState } from 'react';
import { useNotify } from 'react-admin';
import { openPdf } from '../api/pdf.ts';
import type { Letter } from './types.ts';

export function AttachmentLink({ letter }: { letter: Letter }) {
  const [working, setWorking] = useState(false);
  const notify = useNotify();
  const open = async () => {
    setWorking(true);
    await openPdf(`/messages/${letter.id}/attachment.pdf`, letter.attachments[0]!).catch((error: Error) => notify(error.message, { type: 'error' }));
    setWorking(false);
  };
  return (
    <Button variant="outlined" disabled={working} onClick={() => void open()}>
      {working ? 'Setting the page…' : 'Download the attachment'}
    </Button>
  );
}
