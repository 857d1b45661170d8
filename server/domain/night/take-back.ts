import type { LogEntry } from './log-entry.ts';

export type TakeBackRefusal =
  | 'unknown-entry'
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
 * What was taken back by mistake is logged again, so a taking back is not taken back. An entry of another
 * night is no more known here than one that never was.
 *
 * @param entry the one that is named, where there is one
 * @param isTakenBack another entry has taken it back already
 */
export function whyNotTakeBack(entry: Pick<LogEntry, 'nightId'> & { readonly kind: string } | undefined, nightId: string, isTakenBack: boolean): TakeBackRefusal | null {
  if (entry?.nightId !== nightId) return 'unknown-entry';
  if (entry.kind === 'takenBack') return 'taking-back-stays';
  return isTakenBack ? 'entry-taken-back-already' : null;
}
