import { Box, Button } from '@mui/material';
import type { Cue, GameSheet } from '../../../server/domain/packet/packet.ts';
import { Tag } from '../../fields/tag.tsx';
import { department } from '../../session/me.ts';
import { Section } from '../../show/section.tsx';
import { OUTCOME_WORDS, wordFor } from '../../words/choices.ts';
import type { LogEntryView, NightLog } from '../types.ts';
import { BankShotForm } from './bank-shot-form.tsx';
import { MentionButtons } from './mention-buttons.tsx';
import type { EntryToLog } from './send-entry.ts';
import { isStanding } from './use-log.ts';

interface Props {
  cues: readonly Cue[];
  games: readonly GameSheet[];
  log: NightLog;
  add: (entry: EntryToLog) => Promise<boolean>;
  busy: boolean;
}

const WHEN = {
  nextWindow: 'Hold the mention for the next time-out or break.',
  deadBall: 'Give the mention at the next dead ball, in four seconds or less.',
  atOnce: 'Your department gives the mention at the basket. Published guidance asks for no announcement while the clock runs.',
};

function Shot({ shot, cues, log, add, busy }: { shot: LogEntryView } & Omit<Props, 'games'>) {
  const owed = cues.filter((cue) => cue.moment === 'mention' && (shot.gameId == null || cue.gameId === shot.gameId));
  return (
    <Box sx={{ py: 1.25, borderTop: 1, borderColor: 'divider' }}>
      <Box sx={{ display: 'flex', gap: 1, flexWrap: 'wrap', alignItems: 'center' }}>
        <Box sx={{ flex: '1 1 220px' }}>{shot.sentence}</Box>
        <Button disabled={busy} onClick={() => void add({ kind: 'takenBack', takesBackEntryId: shot.id })}>Take back the shot</Button>
      </Box>
      {owed.map((cue) => {
        const mention = log.entries.find((entry) => isStanding(entry) && entry.kind === 'mention' && entry.happeningEntryId === shot.id && entry.commitmentId === cue.commitmentId);
        return (
          <Box key={cue.cueKey} sx={{ display: 'flex', gap: 1, flexWrap: 'wrap', alignItems: 'center', pl: { sm: 2 } }}>
            <Box sx={{ flex: '1 1 220px' }}>{cue.sponsorName}: {mention ? <Tag mood={mention.outcome === 'given' ? 'good' : 'care'}>Mention {wordFor(OUTCOME_WORDS, mention.outcome).toLowerCase()}</Tag> : 'mention to come'}</Box>
            {!mention && <MentionButtons cue={cue} shot={shot} add={add} busy={busy} />}
          </Box>
        );
      })}
    </Box>
  );
}

/** Bank shots and the mentions they call for; the mention comes after the happening, never instead of it. */
export function BankShots({ cues, games, log, add, busy }: Props) {
  if (!cues.some((cue) => cue.moment === 'mention')) return null;
  const shots = log.entries.filter((entry) => entry.kind === 'happening' && isStanding(entry));
  return (
    <Section title="Bank shots" lead={WHEN[department().settings?.bankShotMention ?? 'nextWindow']}>
      <BankShotForm games={games} add={add} busy={busy} />
      {shots.length === 0 && <p>No bank shot logged yet.</p>}
      {shots.map((shot) => <Shot key={shot.id} shot={shot} cues={cues} log={log} add={add} busy={busy} />)}
    </Section>
  );
}
