import { useState } from 'react';
import { useNotify, useRefresh } from 'react-admin';
import type { Packet } from '../../../server/domain/packet/packet.ts';
import { useServer } from '../../api/use-server.ts';
import type { LogEntryView, Night, NightLog } from '../types.ts';
import { sendEntry, type EntryToLog } from './send-entry.ts';

/** The night's log beside the cues it is about, and the way to add to it. */
export function useLog(night: Night) {
  const log = useServer<NightLog>(`/nights/${night.id}/log`);
  const packet = useServer<Packet>(`/nights/${night.id}/packet`);
  const [busy, setBusy] = useState(false);
  const [reason, setReason] = useState('');
  const isLate = night.state === 'signedOff';
  const notify = useNotify();
  const refresh = useRefresh();
  const add = async (entry: EntryToLog): Promise<boolean> => {
    setBusy(true);
    try {
      await sendEntry(night.id, entry, isLate ? reason.trim() : null);
      await log.refetch();
      refresh();
      return true;
    } catch (error) {
      notify(error instanceof Error ? error.message : 'This entry was not taken.', { type: 'error' });
      return false;
    } finally {
      setBusy(false);
    }
  };
  return { log, packet, add, busy: busy || (isLate && reason.trim() === ''), reason, setReason };
}

export const isStanding = (entry: LogEntryView): boolean => entry.kind !== 'takenBack' && !entry.takenBack;

/** The entries that stand for one cue of the packet. */
export function entriesOf(log: NightLog, cue: { cueKey: string; gameId: string | null }): LogEntryView[] {
  return log.entries.filter((entry) => isStanding(entry) && entry.cueKey === cue.cueKey && (entry.gameId == null || entry.gameId === cue.gameId));
}
