import type { DeskEntry, NewDeskEntry } from '../../../server/domain/night/desk/desk-entry.ts';
import { outboxOf } from '../../../server/domain/night/desk/outbox/outbox.ts';
import type { KeptEntry, NumberedEntry, Outbox } from '../../../server/domain/night/desk/outbox/outbox.ts';
import { database } from './database.ts';
import { newId } from './ids.ts';

/** Why an entry could not be stored, in a sentence. What was stored before is untouched. */
export class NotStored extends Error {}

const EMPTY = {
  outcome: null, reason: null, gameId: null, cueKey: null, placementId: null, commitmentId: null, windowKey: null, teamId: null, playerNumber: null,
  period: null, clock: null, detail: null, happeningEntryId: null, takesBackEntryId: null,
} as const;

/**
 * Stores one entry with the next place on this device, both in one transaction: they are there together or not at all, also
 * when two tabs write at the same moment.
 *
 * @throws NotStored with a sentence
 */
export async function storeEntry(nightId: string, deviceId: string, said: NewDeskEntry): Promise<DeskEntry> {
  try {
    const transaction = (await database()).transaction(['sequences', 'entries'], 'readwrite', { durability: 'strict' });
    const sequences = transaction.objectStore('sequences');
    const last = (await sequences.get(nightId))?.last ?? 0;
    const entry: DeskEntry = { ...EMPTY, ...said, id: newId(), deviceId, sequence: last + 1, occurredAt: new Date().toISOString() };
    await Promise.all([
      sequences.put({ nightId, last: last + 1 }),
      transaction.objectStore('entries').add({ id: entry.id, nightId, entry, place: 'onDevice', number: null, sentence: null }),
      transaction.done,
    ]);
    return entry;
  } catch (failure) {
    throw new NotStored(whyNotStored(failure));
  }
}

function whyNotStored(failure: unknown): string {
  const name = failure instanceof DOMException ? failure.name : '';
  if (name === 'QuotaExceededError') return 'This device has no room left, so the entry is not stored. Free some space, then try again; what was stored before is safe.';
  return 'The browser could not store this entry. Try again; what was stored before is safe.';
}

/** Writes down where entries are now. An entry that is on the server stays there, whatever another tab still believes. */
export async function storePlaces(nightId: string, changed: readonly KeptEntry[]): Promise<void> {
  if (changed.length === 0) return;
  const transaction = (await database()).transaction(['entries', 'sequences'], 'readwrite');
  const entries = transaction.objectStore('entries');
  for (const one of changed) {
    const there = await entries.get(one.entry.id);
    if (there?.place === 'onServer' && there.number !== null) continue;
    await entries.put({ ...one, id: one.entry.id, nightId });
  }
  await transaction.done;
}

/** A place that the server knows of this device is never taken again. */
export async function storeLastSequence(nightId: string, last: number): Promise<void> {
  const transaction = (await database()).transaction('sequences', 'readwrite');
  const known = (await transaction.store.get(nightId))?.last ?? 0;
  if (last > known) await transaction.store.put({ nightId, last });
  await transaction.done;
}

export async function storeOthers(nightId: string, others: readonly NumberedEntry[]): Promise<void> {
  if (others.length === 0) return;
  const transaction = (await database()).transaction('others', 'readwrite');
  for (const entry of others) await transaction.store.put({ nightId, number: entry.number, entry });
  await transaction.done;
}

/** Everything this device has of a night's log, read once at the start. */
export async function readOutbox(nightId: string, deviceId: string): Promise<Outbox> {
  const db = await database();
  const [kept, others] = await Promise.all([db.getAllFromIndex('entries', 'night', nightId), db.getAllFromIndex('others', 'night', nightId)]);
  return outboxOf(deviceId, kept.map(({ entry, place, number, sentence }) => ({ entry, place, number, sentence })), others.map(({ entry }) => entry));
}
