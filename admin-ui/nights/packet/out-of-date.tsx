import { Alert } from '@mui/material';
import type { Night } from '../types.ts';

/** Why the packet has to be issued again. */
export function OutOfDate({ night }: { night: Night }) {
  if (!night.packetOutOfDate) return null;
  if (night.packetBecause === 'choice') {
    return (
      <Alert severity="error" icon={false} sx={{ mb: 1 }}>
        <strong>A family chose otherwise about a name in packet {night.packetIssued}.</strong> Take its pages off the table, issue the packet again and swap the pages it names. The old
        packet is sealed: only a director opens it.
      </Alert>
    );
  }
  return (
    <Alert severity="warning" icon={false} sx={{ mb: 1 }}>
      Something changed since packet {night.packetIssued} was issued. Issue it again: only the pages that differ are printed.
    </Alert>
  );
}
