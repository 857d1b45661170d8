import { Box, Button } from '@mui/material';
import { useState } from 'react';
import type { Cue } from '../../../server/domain/packet/packet.ts';
import { Tag, type Mood } from '../../fields/tag.tsx';
import { windowName } from '../../seasons/sports.ts';
import { LEVEL_WORDS, NOT_READ_WORDS, OUTCOME_WORDS, wordFor } from '../../words/choices.ts';
import type { Night, NightLog } from '../types.ts';
import { ReasonDialog } from './reason-dialog.tsx';
import type { EntryToLog } from './send-entry.ts';
import { entriesOf } from './use-log.ts';

const MOODS: Record<string, Mood> = { given: 'good', cutShort: 'care', notRead: 'bad' };

interface Props {
  cue: Cue;
  night: Night;
  log: NightLog;
  add: (entry: EntryToLog) => Promise<boolean>;
  busy: boolean;
}

/** One planned read with the three things that can have happened to it. */
export function CueRow({ cue, night, log, add, busy }: Props) {
  const [asking, setAsking] = useState<'cutShort' | 'notRead' | null>(null);
  const [last] = entriesOf(log, cue).slice(-1);
  const game = night.games.find((one) => one.id === cue.gameId);
  const entry = {
    kind: 'read' as const,
    cueKey: cue.cueKey,
    ...(cue.gameId ? { gameId: cue.gameId } : {}),
    ...(cue.placementId ? { placementId: cue.placementId } : {}),
    ...(cue.commitmentId ? { commitmentId: cue.commitmentId } : {}),
  };
  const what = `${cue.sponsorName ?? cue.title}, ${cue.title}`;
  return (
    <Box sx={{ display: 'flex', gap: 1.5, flexWrap: 'wrap', alignItems: 'center', py: 1.25, borderTop: 1, borderColor: 'divider' }}>
      <Box sx={{ flex: '1 1 240px', minWidth: 0 }}>
        <strong>{cue.number}. {cue.sponsorName ?? cue.title}</strong>
        <Box sx={{ color: 'text.secondary' }}>{[cue.title, cue.window && windowName(cue.window), night.games.length > 1 && game && wordFor(LEVEL_WORDS, game.level)].filter(Boolean).join(' · ')}</Box>
        {last && <Tag mood={MOODS[last.outcome ?? ''] ?? 'plain'}>{wordFor(OUTCOME_WORDS, last.outcome)}{last.reason ? `: ${NOT_READ_WORDS[last.reason] ?? last.reason}` : ''}</Tag>}
      </Box>
      {last ? (
        <Button disabled={busy} onClick={() => void add({ kind: 'takenBack', takesBackEntryId: last.id })} aria-label={`Take back: ${what}`}>Take back</Button>
      ) : (
        <Box sx={{ display: 'flex', gap: 1, flexWrap: 'wrap' }}>
          <Button variant="contained" disabled={busy} onClick={() => void add({ ...entry, outcome: 'given' })} aria-label={`Given: ${what}`}>Given</Button>
          <Button variant="outlined" disabled={busy} onClick={() => setAsking('cutShort')} aria-label={`Cut short: ${what}`}>Cut short</Button>
          <Button variant="outlined" disabled={busy} onClick={() => setAsking('notRead')} aria-label={`Not read: ${what}`}>Not read</Button>
        </Box>
      )}
      {asking && <ReasonDialog outcome={asking} what={what} onClose={() => setAsking(null)} onReason={(reason) => add({ ...entry, outcome: asking, reason })} />}
    </Box>
  );
}
