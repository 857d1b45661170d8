import { Alert, Box } from '@mui/material';
import { minutesAndSeconds } from '../../../server/domain/packet/honours.ts';
import type { Packet } from '../../../server/domain/packet/packet.ts';
import { useServer } from '../../api/use-server.ts';
import { Name } from '../../fields/name.tsx';
import { CommandButton } from '../../forms/command-button.tsx';
import { EmptyList } from '../../lists/empty-list.tsx';
import { Rows } from '../../lists/rows.tsx';
import { iMay } from '../../session/rights.ts';
import { Reading } from '../../show/reading.tsx';
import { Section } from '../../show/section.tsx';
import { ANNOUNCE_WORDS, wordFor } from '../../words/choices.ts';
import { RosterCaution } from '../../teams/roster-caution.tsx';
import type { Night } from '../types.ts';
import { FileSheet } from './file-sheet.tsx';
import { ListButton, WINDOW_WORDS } from './list-form.tsx';
import type { HonouredStudent, HonoursList } from './types.ts';

/** "14 seniors × 20 s = 4 min 40 s", and what the window they stand in holds. */
function Time({ list, packet }: { list: HonoursList; packet: Packet | undefined }) {
  const who = list.kind === 'seniors' ? 'seniors' : 'students';
  const window = packet?.windows.find(({ windowKey }) => windowKey === list.windowKind);
  const over = window?.overSeconds ?? 0;
  return (
    <Box sx={{ my: 1 }}>
      <strong className="tabular">{list.students.length} {who} × {list.secondsEach} s = {minutesAndSeconds(list.secondsInAll)}</strong>
      {window && window.capacitySeconds !== null && (
        <Box sx={{ color: over > 0 ? 'error.main' : 'text.secondary' }}>
          {WINDOW_WORDS[list.windowKind]} there are {minutesAndSeconds(window.capacitySeconds)}; with everything else that is read, {minutesAndSeconds(window.filledSeconds)} are filled{over > 0 ? `: ${minutesAndSeconds(over)} too many` : ''}.
        </Box>
      )}
    </Box>
  );
}

function Students({ list }: { list: HonoursList }) {
  if (list.students.length === 0) return <EmptyList>Nobody is on this list yet. Read a file of students, or add them one by one to the file you have.</EmptyList>;
  return (
    <Rows<HonouredStudent>
      label={`Students of ${list.title}`}
      rows={list.students}
      columns={[
        { label: 'Order', show: (one) => one.place },
        { label: 'Student', show: (one) => <Name name={one.name} sayAs={one.sayAs} /> },
        { label: 'With', show: (one) => one.escorts ?? '–' },
        { label: 'Line', show: (one) => <>{one.line ?? '–'}{one.leaveOut.length > 0 && <Box component="span" sx={{ display: 'block', color: 'warning.main' }}>Leave out “{one.leaveOut.join('”, “')}”: not directory information</Box>}</> },
        { label: 'Announced', show: (one) => wordFor(ANNOUNCE_WORDS, one.announce) },
      ]}
    />
  );
}

function One({ night, list, packet, mayChange }: { night: Night; list: HonoursList; packet: Packet | undefined; mayChange: boolean }) {
  const remove = (
    <CommandButton label="Take it away" title={`Take ${list.title} away`} explains="The list goes; the students stay with their teams and their families’ choices." path={`/honours-lists/${list.id}`} method="DELETE" success="The list is gone." color="error" />
  );
  return (
    <Section title={list.title} lead={WINDOW_WORDS[list.windowKind]} actions={mayChange && <><ListButton nightId={night.id} list={list} />{remove}</>}>
      <Time list={list} packet={packet} />
      <Students list={list} />
      {mayChange && <FileSheet list={list} />}
    </Section>
  );
}

/** Seniors and honors of a night: who is read, with whom, and how long it takes. */
export function HonoursSheet({ night }: { night: Night }) {
  const asked = useServer<{ data: HonoursList[] }>(`/nights/${night.id}/honours-lists`);
  const { data: packet } = useServer<Packet>(`/nights/${night.id}/packet`);
  const mayChange = iMay('rosters', 'edit');
  return (
    <>
      <RosterCaution />
      <Alert severity="info" icon={false} sx={{ mb: 1.5 }}>
        A line may tell of sports, activities, honors and awards the school has named as directory information. It never tells marks or class rank, health or injury, discipline, eligibility or a student number.
      </Alert>
      <Reading of={asked}>
        {({ data }) => (
          <>
            {data.map((list) => <One key={list.id} night={night} list={list} packet={packet} mayChange={mayChange} />)}
            {data.length === 0 && <EmptyList>Nobody is honored on this night yet. On senior night, make a list and read the file of seniors into it.</EmptyList>}
            {mayChange && <ListButton nightId={night.id} />}
          </>
        )}
      </Reading>
    </>
  );
}
