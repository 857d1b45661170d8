import type { LogEntry } from './log-entry.ts';

export type TakeBackRefusal =
  | 'unknown-entry'
  | 'entry-of-another-night'
  | 'entry-taken-back-already'
  | 'taking-back-stays';

/** The ids of all entries that another entry has taken back. */
export function takenBackIds(entries: readonly Pick<LogEntry, 'kind' | 'takesBackEntryId'>[]): Set<string> {
  const ids = entries.filter((entry) => entry.kind === 'takenBack').map((entry) => entry.takesBackEntryId);
  return new Set(ids.filter((id) => id !== null));
}

/** The entries that stand: neither taken back nor themselves a taking back, in the order given. */
export function standing<Entry extends Pick<LogEntry, 'id' | 'kind' | 'takesBackEntryId'>>(entries: readonly Entry[]): Entry[] {
  const gone = takenBackIds(entries);
  return entries.filter((entry) => entry.kind !== 'takenBack' && !gone.has(entry.id));
}

/**
 * Why an entry cannot be taken back, or null. Taking back is an entry of its own; nothing is deleted.
 * What was taken back by mistake is logged again, so a taking back is not taken back.
 *
 * @param entries the log of the night
 */
export function whyNotTakeBack(entryId: string, nightId: string, entries: readonly LogEntry[]): TakeBackRefusal | null {
  const entry = entries.find((other) => other.id === entryId);
  if (!entry) return 'unknown-entry';
  if (entry.nightId !== nightId) return 'entry-of-another-night';
  if (entry.kind === 'takenBack') return 'taking-back-stays';
  return takenBackIds(entries).has(entryId) ? 'entry-taken-back-already' : null;
}
