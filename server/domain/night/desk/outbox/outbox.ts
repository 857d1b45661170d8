import type { DeskEntry, DeskLine, EntryPlace } from '../desk-entry.ts';

/** An entry in a device's store, and what is known of where it is. */
export interface KeptEntry {
  readonly entry: DeskEntry;
  readonly place: EntryPlace;
  /** its number in the night's log, once the server has it */
  readonly number: number | null;
  /** why it needs attention */
  readonly sentence: string | null;
}

/** An entry as the server gives it back, with the number it has there. */
export type NumberedEntry = DeskEntry & { readonly number: number };

/**
 * What one device knows of one night's log: its own entries, those of others, and how far it has read. Every rule here answers
 * a new one; nothing in it looks at a clock, and the order of a device's entries is their sequence.
 */
export interface Outbox {
  readonly deviceId: string;
  /** by id; entries taken over from another device's file are among them, under that device's id */
  readonly kept: ReadonlyMap<string, KeptEntry>;
  /** entries of other devices, by number */
  readonly others: ReadonlyMap<number, NumberedEntry>;
  /** every number up to this one is known: the cursor to ask for more with */
  readonly readUpTo: number;
  /** the server no longer knows who works here; the queue stays until somebody signs in again */
  readonly waitsForSignIn: boolean;
  /** sends without a usable answer, one after the other */
  readonly failures: number;
  /** how many entries go in one batch; fewer while the server refuses a whole batch for one of them */
  readonly batchSize: number;
}

/** As many as the server takes quickly in one go; common practice, no source. */
export const LARGEST_BATCH = 100;

export function emptyOutbox(deviceId: string): Outbox {
  return { deviceId, kept: new Map(), others: new Map(), readUpTo: 0, waitsForSignIn: false, failures: 0, batchSize: LARGEST_BATCH };
}

/** The outbox of what a device's store holds, read at its start. */
export function outboxOf(deviceId: string, kept: readonly KeptEntry[], others: readonly NumberedEntry[]): Outbox {
  const outbox = { ...emptyOutbox(deviceId), kept: new Map(kept.map((one) => [one.entry.id, one])), others: new Map(others.map((one) => [one.number, one])) };
  return { ...outbox, readUpTo: readUpTo(outbox) };
}

/** The place the next entry of this device takes, 1 and up. */
export function nextSequence(outbox: Outbox): number {
  return 1 + [...outbox.kept.values()].reduce((last, { entry }) => (entry.deviceId === outbox.deviceId ? Math.max(last, entry.sequence) : last), 0);
}

/** The outbox with an entry that has just been stored on this device. One that is there already stays as it is. */
export function written(outbox: Outbox, entry: DeskEntry): Outbox {
  if (outbox.kept.has(entry.id)) return outbox;
  return withKept(outbox, [{ entry, place: 'onDevice', number: null, sentence: null }]);
}

export function withKept(outbox: Outbox, changed: readonly KeptEntry[]): Outbox {
  if (changed.length === 0) return outbox;
  const kept = new Map(outbox.kept);
  for (const one of changed) kept.set(one.entry.id, one);
  return { ...outbox, kept };
}

/** The cursor: the last number before the first that is not known yet. */
export function readUpTo(outbox: Pick<Outbox, 'kept' | 'others'> & Partial<Pick<Outbox, 'readUpTo'>>): number {
  const known = new Set(outbox.others.keys());
  for (const { number } of outbox.kept.values()) if (number !== null) known.add(number);
  let last = outbox.readUpTo ?? 0;
  while (known.has(last + 1)) last += 1;
  return last;
}

/** Where this device's entries are, each in one place. */
export function countsOf(outbox: Outbox): Record<EntryPlace, number> {
  const counts = { onDevice: 0, onServer: 0, needsAttention: 0 };
  for (const { place } of outbox.kept.values()) counts[place] += 1;
  return counts;
}

/** The three counts in words: "3 entries are on this device only, 41 are on the server, none needs attention." */
export function countsInWords({ onDevice, onServer, needsAttention }: Record<EntryPlace, number>): string {
  const are = (count: number) => (count === 0 ? 'none is' : count === 1 ? '1 is' : `${count} are`);
  const first = onDevice === 0 ? 'No entry is' : onDevice === 1 ? '1 entry is' : `${onDevice} entries are`;
  const last = needsAttention === 0 ? 'none needs' : needsAttention === 1 ? '1 needs' : `${needsAttention} need`;
  return `${first} on this device only, ${are(onServer)} on the server, ${last} attention.`;
}

/**
 * The log as this device knows it: by number, then what has no number yet by device and sequence. The phone's clock has no say.
 * Entries taken over from another device's file are not this device's own.
 */
export function linesOf(outbox: Outbox): DeskLine[] {
  const lines: DeskLine[] = [...outbox.others.values()].map((entry) => ({ ...entry, place: 'onServer', isOwn: false, sentence: null }));
  for (const { entry, place, number, sentence } of outbox.kept.values()) lines.push({ ...entry, place, number, sentence, isOwn: entry.deviceId === outbox.deviceId });
  return lines.sort(byNumberThenSequence);
}

function byNumberThenSequence(a: DeskLine, b: DeskLine): number {
  if (a.number !== null || b.number !== null) return (a.number ?? Infinity) - (b.number ?? Infinity);
  if (a.deviceId !== b.deviceId) return a.deviceId < b.deviceId ? -1 : 1;
  return a.sequence - b.sequence;
}
