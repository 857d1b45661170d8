import { CommandButton } from '../../forms/command-button.tsx';
import type { Night } from '../types.ts';

/** Gives the packet its number, so that the paper at the table can be told from an older one. */
export const IssueButton = ({ night }: { night: Night }) => (
  <CommandButton<{ number: number }>
    label={night.packetIssued === null ? 'Issue the packet' : 'Issue it again'}
    title={night.packetIssued === null ? 'Issue the packet' : `Issue packet ${night.packetIssued + 1}`}
    explains="The packet as it stands now gets a number, which is printed on every page. What changes later shows as out of date and asks for a new issue."
    path={`/nights/${night.id}/packet-issues`}
    body={() => ({})}
    success="The packet is issued. Download it to print."
    variant="contained"
  />
);
