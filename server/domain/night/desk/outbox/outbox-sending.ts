import type { DeskEntry } from '../desk-entry.ts';
import { LARGEST_BATCH, readUpTo, withKept } from './outbox.ts';
import type { KeptEntry, Outbox } from './outbox.ts';

/** What is sent in one request: entries of one device, in their order. */
export interface Batch {
  readonly deviceId: string;
  readonly entries: readonly DeskEntry[];
}

/** What the server says of one entry of a batch. */
export interface EntryAnswer {
  readonly id: string;
  readonly status: 'stored' | 'already' | 'aside' | 'refused';
  readonly number?: number;
  readonly sentence?: string;
}

/** What came back: a result for each entry, another status with its sentence, or nothing at all. */
export type BatchAnswer =
  | { readonly kind: 'results'; readonly results: readonly EntryAnswer[] }
  | { readonly kind: 'refused'; readonly status: number; readonly sentence: string }
  | { readonly kind: 'silence' };

/** What goes out next, or null when nothing waits or nobody is signed in. Sent again it is the same, entry for entry. */
export function batchToSend(outbox: Outbox): Batch | null {
  if (outbox.waitsForSignIn) return null;
  const waiting = [...outbox.kept.values()].filter((one) => one.place === 'onDevice').map((one) => one.entry);
  if (waiting.length === 0) return null;
  // What came in by file from another device goes out in that device's name, after this device's own.
  const deviceId = waiting.some((entry) => entry.deviceId === outbox.deviceId) ? outbox.deviceId : waiting[0]!.deviceId;
  const theirs = waiting.filter((entry) => entry.deviceId === deviceId).sort((a, b) => a.sequence - b.sequence);
  return { deviceId, entries: theirs.slice(0, outbox.batchSize) };
}

/** The body of the request: the device once, each entry without it. */
export function bodyOf(batch: Batch): { deviceId: string; entries: Omit<DeskEntry, 'deviceId'>[] } {
  return { deviceId: batch.deviceId, entries: batch.entries.map(({ deviceId: _device, ...entry }) => entry) };
}

/** No permission, or no such night: the same for every entry there is. */
const OF_THE_WHOLE_NIGHT = [403, 404];
/** Something about an entry: alone it is held, among others it has to be found first. */
const OF_AN_ENTRY = [400, 409, 413, 422];

/**
 * The outbox after an answer. No answer deletes an entry, and one that is on the server never leaves that place: an answer that
 * comes late or twice changes nothing.
 */
export function answered(outbox: Outbox, batch: Batch, answer: BatchAnswer): Outbox {
  if (answer.kind === 'results') return afterResults(outbox, batch, answer.results);
  if (answer.kind === 'silence') return { ...outbox, failures: outbox.failures + 1 };
  if (answer.status === 401) return { ...outbox, waitsForSignIn: true, failures: 0 };
  const isAlone = batch.entries.length === 1;
  if (OF_THE_WHOLE_NIGHT.includes(answer.status) || (isAlone && OF_AN_ENTRY.includes(answer.status))) {
    return { ...withKept(outbox, held(outbox, batch, answer.sentence)), failures: 0 };
  }
  if (OF_AN_ENTRY.includes(answer.status)) return { ...outbox, batchSize: Math.max(1, batch.entries.length >> 1), failures: 0 };
  return { ...outbox, failures: outbox.failures + 1 };
}

function afterResults(outbox: Outbox, batch: Batch, results: readonly EntryAnswer[]): Outbox {
  const sent = new Set(batch.entries.map((entry) => entry.id));
  const changed = results.flatMap((result): KeptEntry[] => {
    const one = outbox.kept.get(result.id);
    if (!one || !sent.has(result.id) || one.place === 'onServer') return [];
    if (result.status === 'stored' || result.status === 'already') return [{ ...one, place: 'onServer', number: result.number ?? null, sentence: null }];
    return [{ ...one, place: 'needsAttention', sentence: result.sentence ?? 'The server did not take this entry.' }];
  });
  // An answer that says nothing about what was asked is no answer.
  const failures = changed.length === 0 ? outbox.failures + 1 : 0;
  const after = withKept({ ...outbox, waitsForSignIn: false, failures, batchSize: LARGEST_BATCH }, changed);
  return { ...after, readUpTo: readUpTo(after) };
}

function held(outbox: Outbox, batch: Batch, sentence: string): KeptEntry[] {
  return batch.entries.flatMap((entry) => {
    const one = outbox.kept.get(entry.id);
    return one?.place === 'onDevice' ? [{ ...one, place: 'needsAttention', sentence }] : [];
  });
}

/** Held entries go into the queue again, because somebody has looked into the reason. */
export function triedAgain(outbox: Outbox): Outbox {
  const waiting = [...outbox.kept.values()].filter((one) => one.place === 'needsAttention');
  return { ...withKept(outbox, waiting.map((one) => ({ ...one, place: 'onDevice', sentence: null }))), failures: 0 };
}

/** Somebody signed in, or the link was opened anew: the queue moves again. */
export function signedInAgain(outbox: Outbox): Outbox {
  return { ...outbox, waitsForSignIn: false, failures: 0 };
}

const FIRST_DELAY_MILLISECONDS = 1000;
const LONGEST_DELAY_MILLISECONDS = 15_000;

/**
 * Milliseconds until the next try: twice as long after each failure, at most a quarter of a minute, spread over half of it so that a
 * gym full of devices does not come back at one moment. Common practice, no source.
 *
 * @param failures tries without an answer so far, 1 and up; 0 waits for nothing
 * @param chance from 0 up to 1, drawn by the caller
 */
export function retryDelayMilliseconds(failures: number, chance: number): number {
  if (failures <= 0) return 0;
  const longest = Math.min(LONGEST_DELAY_MILLISECONDS, FIRST_DELAY_MILLISECONDS * 2 ** Math.min(failures - 1, 10));
  return Math.round(longest / 2 + (longest / 2) * chance);
}
