import { Button } from '@mui/material';
import { clockText } from '../../format/instant.ts';
import { EmptyList } from '../../lists/empty-list.tsx';
import { Rows } from '../../lists/rows.tsx';
import { Section } from '../../show/section.tsx';
import type { LogEntryView, NightLog } from '../types.ts';
import type { EntryToLog } from './send-entry.ts';
import { isStanding } from './use-log.ts';

/** The whole log, newest first; what was taken back stays to be seen. */
export function Entries({ log, add, busy }: { log: NightLog; add: (entry: EntryToLog) => Promise<boolean>; busy: boolean }) {
  const entries = [...log.entries].sort((a, b) => b.number - a.number);
  const devices = [...new Set(log.entries.map((entry) => entry.deviceId))];
  return (
    <Section title="Everything logged">
      {entries.length === 0 ? (
        <EmptyList>Nothing is logged yet. What you press above appears here with the hour and your name.</EmptyList>
      ) : (
        <Rows<LogEntryView>
          label="Everything logged"
          rows={entries}
          columns={[
            { label: 'Entry', show: (entry) => (entry.takenBack ? <><s>{entry.sentence}</s> (taken back)</> : entry.sentence) },
            { label: 'Number', numeric: true, show: (entry) => entry.number },
            { label: 'At', show: (entry) => clockText(entry.occurredAt) },
            { label: 'By', show: (entry) => entry.loggedByName ?? '–' },
            ...(devices.length > 1 ? [{ label: 'Device', show: (entry: LogEntryView) => `Device ${devices.indexOf(entry.deviceId) + 1}` }] : []),
            { label: 'Change', show: (entry) => isStanding(entry) && <Button disabled={busy} onClick={() => void add({ kind: 'takenBack', takesBackEntryId: entry.id })} aria-label={`Take back entry ${entry.number}`}>Take back</Button> },
          ]}
        />
      )}
    </Section>
  );
}
