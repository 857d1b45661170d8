import { Alert } from '@mui/material';
import { useServer } from '../../api/use-server.ts';
import { Go } from '../../fields/go.tsx';
import { Reading } from '../../show/reading.tsx';
import { Figures } from '../../show/figures.tsx';
import { Section } from '../../show/section.tsx';
import { numberText } from '../../words/count.ts';
import type { LogEntryView, Night, NightLog } from '../types.ts';
import { SignOffForm } from './sign-off-form.tsx';
import { isStanding } from './use-log.ts';

const isRead = (entry: LogEntryView): boolean => isStanding(entry) && (entry.kind === 'read' || entry.kind === 'mention') && entry.commitmentId !== null;

function Summary({ night, log }: { night: Night; log: NightLog }) {
  const reads = log.entries.filter(isRead);
  const of = (outcome: string) => reads.filter((entry) => entry.outcome === outcome);
  const planned = Math.max(0, night.placementCount - reads.filter((entry) => entry.kind === 'read').length);
  return (
    <>
      <Figures
        figures={[
          { label: 'Will count', value: numberText(log.toCount), note: 'for their sponsors' },
          { label: 'Given', value: numberText(of('given').length) },
          { label: 'Cut short', value: numberText(of('cutShort').length) },
          { label: 'Not read', value: numberText(of('notRead').length) },
          { label: 'Planned, nothing logged', value: numberText(planned) },
          { label: 'Bank shots', value: numberText(log.entries.filter((entry) => entry.kind === 'happening' && isStanding(entry)).length) },
        ]}
      />
      {planned > 0 && night.state === 'open' && (
        <Alert severity="warning" icon={false} sx={{ my: 1 }}>
          Some planned reads have no entry. They stay owed. <Go to={`/nights/${night.id}/show?tab=log`}>Log what happened</Go> first, if you know it.
        </Alert>
      )}
      {night.state === 'signedOff' ? (
        <Alert severity="success" icon={false}>This night is signed off. A director can still add what was forgotten in the log; it counts at once as an amendment.</Alert>
      ) : (
        <SignOffForm night={night} cutShort={of('cutShort')} />
      )}
    </>
  );
}

/** What will be counted, and the one tap that counts it. */
export function SignOffSheet({ night }: { night: Night }) {
  const log = useServer<NightLog>(`/nights/${night.id}/log`);
  return (
    <Section title="Sign off the night" lead="An adult closes the night. Reads move from owed to given and their money is earned; later entries are amendments.">
      <Reading of={log}>{(entries) => <Summary night={night} log={entries} />}</Reading>
    </Section>
  );
}
