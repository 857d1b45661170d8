import { ask, newKey } from '../../api/http.ts';

export interface EntryToLog {
  kind: 'read' | 'mention' | 'happening' | 'note' | 'takenBack';
  outcome?: string;
  reason?: string;
  gameId?: string;
  cueKey?: string;
  placementId?: string;
  commitmentId?: string;
  windowKey?: string;
  playerNumber?: string;
  teamId?: string;
  detail?: Record<string, unknown>;
  happeningEntryId?: string;
  takesBackEntryId?: string;
}

interface Result {
  id: string;
  status: 'stored' | 'already' | 'aside' | 'refused';
  sentence?: string;
}

const DEVICE = 'rafterline.device';
const SEQUENCE = 'rafterline.sequence';

/** This browser's own name, so that the night's log can be put in order over several devices. */
function deviceId(): string {
  const kept = localStorage.getItem(DEVICE);
  if (kept) return kept;
  const made = newKey();
  localStorage.setItem(DEVICE, made);
  return made;
}

function nextSequence(): number {
  const next = Number(localStorage.getItem(SEQUENCE) ?? '0') + 1;
  localStorage.setItem(SEQUENCE, String(next));
  return next;
}

/**
 * Logs one entry; what was refused is thrown as the sentence that says why.
 *
 * @param reason why a night that is signed off is changed; null while it is open
 */
export async function sendEntry(nightId: string, entry: EntryToLog, reason: string | null): Promise<void> {
  const body = {
    ...(reason === null ? {} : { reason }),
    deviceId: deviceId(),
    entries: [{ id: newKey(), sequence: nextSequence(), occurredAt: new Date().toISOString(), ...entry }],
  };
  const { results } = await ask<{ results?: Result[] }>(`/nights/${nightId}/${reason === null ? 'log' : 'amend'}`, { method: 'POST', body, idempotencyKey: newKey() });
  const refused = results?.find((one) => one.status === 'refused');
  if (refused) throw new Error(refused.sentence ?? 'This entry was not taken.');
}
