import type { Packet } from '../../../server/domain/packet/packet.ts';
import { useServer } from '../../api/use-server.ts';
import { iMay } from '../../session/rights.ts';
import { Reading } from '../../show/reading.tsx';
import { Section } from '../../show/section.tsx';
import type { Night } from '../types.ts';
import { IssueButton } from './issue-button.tsx';
import { IssuesSheet } from './issues-sheet.tsx';
import { OutOfDate } from './out-of-date.tsx';
import { PdfLink } from './pdf-link.tsx';
import { ReadinessList } from './readiness-list.tsx';
import { RunOfShow } from './run-of-show.tsx';
import { WindowBars } from './window-bars.tsx';

function BeforeYouPrint({ night, packet }: { night: Night; packet: Packet }) {
  return (
    <Section
      title="Before you print"
      actions={<><PdfLink night={night} />{iMay('packets', 'create') && night.state === 'open' && <IssueButton night={night} />}</>}
    >
      <OutOfDate night={night} />
      <ReadinessList lines={packet.readiness ?? []} />
    </Section>
  );
}

/** What is missing before the packet can be printed, whether all of it fits, and what will be read, in order. */
export function PacketSheet({ night }: { night: Night }) {
  const asked = useServer<Packet>(`/nights/${night.id}/packet`);
  return (
    <Reading of={asked}>
      {(packet) => (
        <>
          <BeforeYouPrint night={night} packet={packet} />
          <IssuesSheet night={night} />
          <WindowBars night={night} packet={packet} />
          <RunOfShow night={night} packet={packet} />
        </>
      )}
    </Reading>
  );
}
