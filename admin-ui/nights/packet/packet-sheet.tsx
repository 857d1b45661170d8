import { Alert, Box, Button } from '@mui/material';
import { useState } from 'react';
import type { Packet } from '../../../server/domain/packet/packet.ts';
import type { ReadinessLine } from '../../../server/domain/packet/readiness.ts';
import { useServer } from '../../api/use-server.ts';
import { Go } from '../../fields/go.tsx';
import { EmptyList } from '../../lists/empty-list.tsx';
import { iMay } from '../../session/rights.ts';
import { Figures } from '../../show/figures.tsx';
import { Reading } from '../../show/reading.tsx';
import { Section } from '../../show/section.tsx';
import { numberText } from '../../words/count.ts';
import type { Night } from '../types.ts';
import { CueView } from './cue-view.tsx';
import { IssueButton } from './issue-button.tsx';
import { PdfLink } from './pdf-link.tsx';

function Gaps({ lines }: { lines: readonly ReadinessLine[] }) {
  if (lines.length === 0) return <Alert severity="success" icon={false}>Nothing is missing. The packet can be issued.</Alert>;
  const must = lines.filter((line) => line.grade === 'mustFix');
  const know = lines.filter((line) => line.grade !== 'mustFix');
  const list = (some: readonly ReadinessLine[]) => (
    <Box component="ul" sx={{ m: 0, pl: 2.5 }}>
      {some.map((line, place) => (
        <li key={place}>{line.sentence}{line.id && <> <Go resource={line.resource} id={line.id}>Mend it</Go></>}</li>
      ))}
    </Box>
  );
  return (
    <>
      {must.length > 0 && <Alert severity="warning" icon={false} sx={{ mb: 1 }}><strong>To mend before you print</strong>{list(must)}</Alert>}
      {know.length > 0 && <Alert severity="info" icon={false}><strong>Worth knowing</strong>{list(know)}</Alert>}
    </>
  );
}

const minutes = (seconds: number): string => `${Math.floor(seconds / 60)}:${String(Math.round(seconds % 60)).padStart(2, '0')}`;

function Sheet({ night, packet }: { night: Night; packet: Packet }) {
  const cues = packet.cues ?? [];
  const [open, setOpen] = useState(false);
  return (
    <>
      <Section
        title="Before you print"
        actions={<>{night.packetIssued !== null && <PdfLink night={night} />}{iMay('packets', 'create') && night.state === 'open' && <IssueButton night={night} />}</>}
      >
        {night.packetOutOfDate && <Alert severity="warning" icon={false} sx={{ mb: 1 }}>Something changed since packet {night.packetIssued} was issued. Issue it again and take the old one off the table.</Alert>}
        <Gaps lines={packet.readiness ?? []} />
      </Section>
      <Section
        title="Run of show"
        lead="In the order of the night. Press a cue for its words; what is set in brackets is done, not said."
        actions={cues.length > 0 && <Button variant="outlined" onClick={() => setOpen(!open)}>{open ? 'Close all the words' : 'Open all the words'}</Button>}
      >
        <Figures
          figures={[
            { label: 'Cues', value: numberText(cues.length) },
            { label: 'Sponsor reads', value: numberText(cues.filter((cue) => cue.isSponsored).length) },
            { label: 'Spoken for sponsors', value: minutes(packet.sponsoredSeconds ?? 0) },
            { label: 'Spoken in all', value: minutes(cues.reduce((sum, cue) => sum + cue.seconds, 0)) },
          ]}
        />
        {cues.length === 0 ? (
          <EmptyList>Nothing to read yet. A night needs a game, rosters and scripts from the library.</EmptyList>
        ) : (
          <Box component="ol" sx={{ listStyle: 'none', p: 0, m: 0 }}>{cues.map((cue) => <CueView key={`${cue.cueKey} ${open}`} cue={cue} open={open} />)}</Box>
        )}
      </Section>
    </>
  );
}

/** What will be read, in order, and what is missing before it can be printed. */
export function PacketSheet({ night }: { night: Night }) {
  const asked = useServer<Packet>(`/nights/${night.id}/packet`);
  return <Reading of={asked}>{(packet) => <Sheet night={night} packet={packet} />}</Reading>;
}
