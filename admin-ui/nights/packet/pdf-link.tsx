import { Button } from '@mui/material';
import { useState } from 'react';
import { useNotify } from 'react-admin';
import { openPdf } from '../../api/pdf.ts';
import type { Night } from '../types.ts';

/** The file of an issue, or the one of what changed with it. */
export function paperOf(night: Night, kind: 'packet' | 'change-set', number: number): [path: string, fileName: string] {
  return [`/nights/${night.id}/${kind}.pdf?issue=${number}`, `${kind}-${night.heldOn}-${number}.pdf`];
}

/** A paper of the packet behind a button. */
export function PaperButton({ night, kind, number, label }: { night: Night; kind: 'packet' | 'change-set'; number: number; label: string }) {
  const [working, setWorking] = useState(false);
  const notify = useNotify();
  const open = async () => {
    setWorking(true);
    await openPdf(...paperOf(night, kind, number)).catch((error: Error) => notify(error.message, { type: 'error' }));
    setWorking(false);
  };
  return (
    <Button variant="outlined" disabled={working} onClick={() => void open()}>
      {working ? 'Setting the pages…' : label}
    </Button>
  );
}

/** The latest packet as paper. */
export const PdfLink = ({ night }: { night: Night }) =>
  night.packetIssued === null ? null : <PaperButton night={night} kind="packet" number={night.packetIssued} label={`Download packet ${night.packetIssued} (PDF)`} />;
