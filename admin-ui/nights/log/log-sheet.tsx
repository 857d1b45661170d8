import { Alert, TextField } from '@mui/material';
import type { Cue } from '../../../server/domain/packet/packet.ts';
import { EmptyList } from '../../lists/empty-list.tsx';
import { Reading } from '../../show/reading.tsx';
import { Section } from '../../show/section.tsx';
import { iMay } from '../../session/rights.ts';
import type { Night, NightLog } from '../types.ts';
import { BankShots } from './bank-shots.tsx';
import { CueRow } from './cue-row.tsx';
import { Entries } from './entries.tsx';
import { FromDevices } from './from-devices.tsx';
import { useLog } from './use-log.ts';

function Reads({ night, cues, log, add, busy }: { night: Night; cues: readonly Cue[]; log: NightLog } & Pick<ReturnType<typeof useLog>, 'add' | 'busy'>) {
  const planned = cues.filter((cue) => cue.placementId !== null && cue.moment !== 'mention');
  return (
    <Section title="Planned sponsor reads" lead="Press what happened. Nothing is counted before sign-off, and every entry can be taken back.">
      {planned.length === 0 ? (
        <EmptyList>No sponsor read is planned on this night. Place one under “Planned reads”.</EmptyList>
      ) : (
        planned.map((cue) => <CueRow key={cue.cueKey} cue={cue} night={night} log={log} add={add} busy={busy} />)
      )}
    </Section>
  );
}

/** What really happened, entry by entry. */
export function LogSheet({ night }: { night: Night }) {
  const { log, packet, add, busy, reason, setReason } = useLog(night);
  const late = night.state === 'signedOff';
  if (late && !iMay('amendments', 'edit')) return <Alert severity="info" icon={false}>This night is signed off. Tell the athletic director what was forgotten; it is added with a reason.</Alert>;
  return (
    <>
      {late && (
        <Alert severity="info" icon={false} sx={{ mb: 2, '& .MuiAlert-message': { width: '100%' } }}>
          This night is signed off. What you add now is an amendment: it is counted at once and stays visible as such, with your reason.
          <TextField label="Why the log is changed now" value={reason} onChange={(event) => setReason(event.target.value)} required fullWidth helperText="Needed before anything can be added" slotProps={{ htmlInput: { maxLength: 300 } }} sx={{ mt: 1.5 }} />
        </Alert>
      )}
      <Reading of={packet}>
        {({ cues, games }) => (
          <Reading of={log}>
            {(entries) => (
              <>
                <Reads night={night} cues={cues} log={entries} add={add} busy={busy} />
                <BankShots cues={cues} games={games} log={entries} add={add} busy={busy} />
                <Entries log={entries} add={add} busy={busy} />
                <FromDevices night={night} onChange={() => void log.refetch()} />
              </>
            )}
          </Reading>
        )}
      </Reading>
    </>
  );
}
