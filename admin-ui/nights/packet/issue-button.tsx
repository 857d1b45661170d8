import { useNotify } from 'react-admin';
import { openPdf } from '../../api/pdf.ts';
import { useServer } from '../../api/use-server.ts';
import { CommandButton } from '../../forms/command-button.tsx';
import { count } from '../../words/count.ts';
import { Reading } from '../../show/reading.tsx';
import type { Issue, Night, NextIssue } from '../types.ts';
import { paperOf } from './pdf-link.tsx';

function inWords({ number, reason, pageCount, changes, sentence }: NextIssue): string {
  if (reason === 'none') return `Nothing changed since packet ${number} was issued: it stays, and its pages are downloaded again.`;
  const why = reason === 'choice' ? `A family chose otherwise about a name in packet ${number - 1}. The old pages leave the table and are destroyed. ` : '';
  if (changes === null) return `${why}All ${count(pageCount, 'page')} are printed, as packet ${number}.`;
  const sheets = changes.swap.length + changes.add.length;
  return `${why}A change set of ${count(sheets, 'page')} and its cover is printed, as packet ${number}. ${sentence} The other pages in the binder stay right.`;
}

/** What issuing will do, found out when it is asked. */
function WhatItDoes({ night }: { night: Night }) {
  const asked = useServer<NextIssue>(`/nights/${night.id}/next-issue`);
  return (
    <>
      <p>What is issued stays as it is: each page carries its version, and what changes later is printed as a change set.</p>
      <Reading of={asked}>{(next) => <p><strong>{inWords(next)}</strong></p>}</Reading>
    </>
  );
}

/** Gives the packet its number and prints it: all of it the first time, later only what changed. */
export function IssueButton({ night }: { night: Night }) {
  const notify = useNotify();
  const print = ({ number, changes }: Issue) => {
    void openPdf(...paperOf(night, changes === null ? 'packet' : 'change-set', number)).catch((error: Error) => notify(error.message, { type: 'error' }));
  };
  return (
    <CommandButton<Issue>
      label={night.packetIssued === null ? 'Issue the packet' : 'Issue it again'}
      title={night.packetIssued === null ? 'Issue the packet' : 'Issue it again'}
      explains={<WhatItDoes night={night} />}
      confirmLabel={night.packetIssued === null ? 'Issue the packet' : 'Issue and print what changed'}
      path={`/nights/${night.id}/packet-issues`}
      body={() => ({})}
      success="The packet is issued; its pages are downloaded."
      onDone={print}
      variant={night.packetOutOfDate || night.packetIssued === null ? 'contained' : 'outlined'}
    />
  );
}
