import { Box, Button } from '@mui/material';
import { useState } from 'react';
import type { Cue } from '../../../server/domain/packet/packet.ts';
import type { LogEntryView } from '../types.ts';
import { ReasonDialog } from './reason-dialog.tsx';
import type { EntryToLog } from './send-entry.ts';

export function MentionButtons({ cue, shot, add, busy }: { cue: Cue; shot: LogEntryView; add: (entry: EntryToLog) => Promise<boolean>; busy: boolean }) {
  const [asking, setAsking] = useState(false);
  const gameId = cue.gameId ?? shot.gameId;
  const entry = {
    kind: 'mention' as const,
    cueKey: cue.cueKey,
    happeningEntryId: shot.id,
    ...(gameId ? { gameId } : {}),
    ...(cue.commitmentId ? { commitmentId: cue.commitmentId } : {}),
  };
  return (
    <Box sx={{ display: 'flex', gap: 1 }}>
      <Button variant="contained" disabled={busy} onClick={() => void add({ ...entry, outcome: 'given' })}>Mention given</Button>
      <Button variant="outlined" disabled={busy} onClick={() => setAsking(true)}>Not read</Button>
      {asking && <ReasonDialog outcome="notRead" what={`${cue.sponsorName ?? ''} mention`} onClose={() => setAsking(false)} onReason={(reason) => add({ ...entry, outcome: 'notRead', reason })} />}
    </Box>
  );
}
