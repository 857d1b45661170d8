import { Box, Typography } from '@mui/material';
import { useState } from 'react';
import { Title } from 'react-admin';
import { useServer } from '../api/use-server.ts';
import { Tag, type Mood } from '../fields/tag.tsx';
import { CommandButton } from '../forms/command-button.tsx';
import { instantText } from '../format/instant.ts';
import { WordsInput } from '../inputs/words-input.tsx';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { Reading } from '../show/reading.tsx';
import { Section } from '../show/section.tsx';
import { LINK_STATE_WORDS, wordFor } from '../words/choices.ts';
import { AddressDialog } from './address-dialog.tsx';
import type { CalendarFeed, NewCalendarFeed } from './types.ts';

const MOODS: Record<CalendarFeed['state'], Mood> = { open: 'good', early: 'plain', ended: 'plain', revoked: 'bad' };

const CALENDARS = [
  {
    calendar: 'games', title: 'Games, for everybody',
    lead: 'Who plays whom, at what level, when and where. For families, the website and the local paper. It says nothing about who works the night, sponsors or students.',
    button: 'Make a public calendar', example: 'Such as “The school’s website”',
  },
  {
    calendar: 'nights', title: 'Nights, for those who work them',
    lead: 'The same, and who is needed when, when the doors open and whether the packet is issued. Students stand in it by their role alone.',
    button: 'Make a private calendar', example: 'Such as “Odell, announcer”',
  },
] as const;

function RevokeButton({ feed, onDone }: { feed: CalendarFeed; onDone: () => void }) {
  return (
    <CommandButton
      label="Revoke"
      title={`Revoke the calendar for ${feed.label ?? 'nobody named'}?`}
      explains="From now on it gives nothing to the phones and programs that have it. What they show already may stay there for a while."
      path={`/calendar-feeds/${feed.id}/revoke`}
      body={() => ({})}
      onDone={onDone}
      success="The calendar is revoked."
      color="error"
      variant="text"
    />
  );
}

function Feeds({ feeds, onDone }: { feeds: readonly CalendarFeed[]; onDone: () => void }) {
  if (feeds.length === 0) return <EmptyList>None was given out yet.</EmptyList>;
  return (
    <Rows<CalendarFeed>
      label="Calendars given out"
      rows={feeds}
      columns={[
        { label: 'For whom', show: (feed) => feed.label ?? '–' },
        { label: 'State', show: (feed) => <Tag mood={MOODS[feed.state]}>{wordFor(LINK_STATE_WORDS, feed.state)}</Tag> },
        { label: 'Good until', show: (feed) => instantText(feed.expiresAt) },
        { label: 'Made', show: (feed) => `${instantText(feed.madeAt)}${feed.madeByName ? ` by ${feed.madeByName}` : ''}` },
        { label: 'Change', show: (feed) => feed.state === 'open' && <RevokeButton feed={feed} onDone={onDone} /> },
      ]}
    />
  );
}

/** Calendars that phones and calendar programs subscribe to. */
export function CalendarFeedsPage() {
  const found = useServer<{ data: CalendarFeed[] }>('/calendar-feeds');
  const [made, setMade] = useState<NewCalendarFeed | null>(null);
  const look = () => void found.refetch();
  return (
    <>
      <Title title="Calendar feeds" />
      <Typography component="p" sx={{ mb: 2, maxWidth: '70ch' }}>
        Subscribe in your phone’s calendar: the games stand there by themselves, and a game that is moved, postponed or cancelled changes there too, usually within a few hours. A calendar is good until a year after the last season ends.
      </Typography>
      <Reading of={found}>
        {({ data }) => (
          <Box>
            {CALENDARS.map(({ calendar, title, lead, button, example }) => (
              <Section
                key={calendar}
                title={title}
                lead={lead}
                actions={
                  <CommandButton<NewCalendarFeed>
                    label={button}
                    title={title}
                    explains={lead}
                    path="/calendar-feeds"
                    body={({ label }) => ({ calendar, label })}
                    onDone={(feed) => { setMade(feed); look(); }}
                    success="The calendar is made."
                  >
                    <WordsInput source="label" label="For whom" longest={120} required helperText={example} />
                  </CommandButton>
                }
              >
                <Feeds feeds={data.filter((feed) => feed.calendar === calendar)} onDone={look} />
              </Section>
            ))}
          </Box>
        )}
      </Reading>
      {made && <AddressDialog feed={made} onClose={() => setMade(null)} />}
    </>
  );
}
