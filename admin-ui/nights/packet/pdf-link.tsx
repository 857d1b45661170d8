import { Button } from '@mui/material';
import { useState } from 'react';
import { useNotify } from 'react-admin';
import { openPdf } from '../../api/pdf.ts';
import type { Night } from '../types.ts';

/** The packet as paper. */
export function PdfLink({ night }: { night: Night }) {
  const [working, setWorking] = useState(false);
  const notify = useNotify();
  const open = async () => {
    setWorking(true);
    await openPdf(`/nights/${night.id}/packet.pdf?issue=${night.packetIssued}`, `packet-${night.heldOn}-${night.packetIssued}.pdf`).catch((error: Error) =>
      notify(error.message, { type: 'error' }),
    );
    setWorking(false);
  };
  return (
    <Button variant="outlined" disabled={working} onClick={() => void open()}>
      {working ? 'Setting the pages…' : `Download packet ${night.packetIssued} (PDF)`}
    </Button>
  );
}
