import type { DeskEntry } from '../desk-entry.ts';
import { readUpTo, withKept, written } from './outbox.ts';
import type { KeptEntry, NumberedEntry, Outbox } from './outbox.ts';

/**
 * The outbox with entries read from the server's log, in whatever order and however often they come. An own entry is known by
 * its id and then is on the server; one that this device has lost is taken in again; the rest are others' lines.
 */
export function received(outbox: Outbox, entries: readonly NumberedEntry[]): Outbox {
  const kept: KeptEntry[] = [];
  let others: Map<number, NumberedEntry> | null = null;
  for (const entry of entries) {
    const one = outbox.kept.get(entry.id);
    if (one ? isSameEntry(one.entry, entry) : entry.deviceId === outbox.deviceId) {
      if (one?.place !== 'onServer' || one.number === null) kept.push({ entry: one?.entry ?? withoutNumber(entry), place: 'onServer', number: entry.number, sentence: null });
    } else if (!outbox.others.has(entry.number)) {
      others ??= new Map(outbox.others);
      others.set(entry.number, entry);
    }
  }
  if (kept.length === 0 && others === null) return outbox;
  const after = { ...withKept(outbox, kept), others: others ?? outbox.others };
  return { ...after, readUpTo: readUpTo(after) };
}

/** The outbox with entries from another device's file. What is known already, here or on the server, is not taken twice. */
export function takenOver(outbox: Outbox, entries: readonly DeskEntry[]): Outbox {
  const known = new Set([...outbox.others.values()].map((entry) => entry.id));
  return entries.filter((entry) => !known.has(entry.id)).reduce(written, outbox);
}

/** The same entry, not only the same id: an id that two entries share is for a person to settle. */
function isSameEntry(own: DeskEntry, there: DeskEntry): boolean {
  // What the server works out or trims may differ; these it keeps as they came.
  const said = ({ deviceId, sequence, kind, outcome, takesBackEntryId }: DeskEntry) => [deviceId, sequence, kind, outcome, takesBackEntryId].join(' ');
  return said(own) === said(there);
}

function withoutNumber({ number: _number, ...entry }: NumberedEntry): DeskEntry {
  return entry;
}
