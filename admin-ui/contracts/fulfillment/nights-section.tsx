import { Button } from '@mui/material';
import { useState } from 'react';
import { Go } from '../../fields/go.tsx';
import { Whole } from '../../fields/whole.tsx';
import { dayText } from '../../format/day.ts';
import { clockText } from '../../format/instant.ts';
import { EmptyList } from '../../lists/empty-list.tsx';
import { Rows } from '../../lists/rows.tsx';
import { Section } from '../../show/section.tsx';
import { count, numberText } from '../../words/count.ts';
import type { Fulfillment, NightFulfillment, ReadGiven } from './types.ts';
import { attendanceText, copyText, gamesText, whatText } from './words.ts';

const NIGHTS_AT_ONCE = 30;

/** One line of the table: a read with its night, or a night on which reads are only planned. */
interface ReadOfNight {
  key: string;
  night: NightFulfillment;
  game: string;
  read: ReadGiven | null;
}

function rowsOf(night: NightFulfillment): ReadOfNight[] {
  const reads = night.reads.map((read, place): ReadOfNight => ({ key: `${night.nightId} ${place}`, night, read, game: night.games.find((game) => game.gameId === read.gameId)?.label ?? gamesText(night) }));
  return night.planned > 0 ? [...reads, { key: `${night.nightId} planned`, night, read: null, game: gamesText(night) }] : reads;
}

const plannedText = ({ planned }: NightFulfillment): string => `${count(planned, 'read')} planned`;

/** Night by night, the latest first; many nights are shown some at a time. */
export function NightsSection({ fulfillment: { nights } }: { fulfillment: Fulfillment }) {
  const [shown, setShown] = useState(NIGHTS_AT_ONCE);
  const latest = nights.toReversed();
  return (
    <Section title="Night by night" lead="Latest first. Whoever was at the table is named by initials where they have an account.">
      {nights.length === 0 ? (
        <EmptyList>No read of this contract is logged or planned yet.</EmptyList>
      ) : (
        <Rows<ReadOfNight>
          label="Reads night by night"
          rows={latest.slice(0, shown).flatMap(rowsOf)}
          keyOf={(row) => row.key}
          columns={[
            { label: 'Night', show: ({ night }) => <Go to={`/nights/${night.nightId}/show?tab=log`}><Whole>{dayText(night.heldOn)}</Whole></Go> },
            { label: 'Game', show: ({ game }) => game },
            { label: 'Read kind', show: ({ read }) => read?.readKindName ?? '–' },
            { label: 'What became of it', show: ({ read, night }) => (read ? whatText(read) : plannedText(night)) },
            { label: 'Window and time', show: ({ read }) => [read?.windowName, read?.at && clockText(read.at)].filter(Boolean).join(', ') || '–' },
            { label: 'Copy', show: ({ read }) => (read ? copyText(read) : '–') },
            { label: 'By', show: ({ read }) => read?.atTheTable ?? '–' },
            { label: 'Attendance', show: ({ night }) => (night.isSignedOff ? attendanceText(night) : '–') },
          ]}
        />
      )}
      {shown < nights.length && (
        <Button variant="outlined" sx={{ mt: 2 }} onClick={() => setShown(shown + 100)}>
          Show earlier nights ({numberText(nights.length - shown)} more)
        </Button>
      )}
    </Section>
  );
}
