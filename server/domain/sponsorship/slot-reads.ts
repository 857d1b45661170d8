import type { LinePosition, SlotPosition } from './position.ts';

/** Where the reads of one commitment (or of one of its games) stand. */
export interface SlotReads {
  promised: number;
  owed: number;
  given: number;
  madeGood: number;
  credited: number;
  /** released and forfeited */
  released: number;
  /** carried out less carried in */
  carried: number;
  extra: number;
}

/** Reads that were settled otherwise than by being read: credited, released, forfeited, carried out. */
export function removedFrom(slot: SlotPosition): number {
  return slot.credited + slot.released + slot.forfeited + slot.carriedOut;
}

export function madeGoodIn(slot: SlotPosition): number {
  return slot.makegoods.reduce((sum, makegood) => sum + makegood.settled, 0);
}

/**
 * The number promised: by the signed terms, or by what occurred between the least and the most. What was settled
 * already stands, even when the log later says that fewer shots fell.
 */
export function promisedIn(line: LinePosition, slot: SlotPosition): number {
  if (slot.endedAt !== undefined) return slot.endedAt;
  if (line.terms.kind !== 'reads' || line.terms.counting !== 'onOccurrence') return slot.promised;
  const occurred = Math.min(slot.atMost ?? Infinity, slot.occurrences);
  const settled = removedFrom(slot) - slot.carriedIn + Math.max(madeGoodIn(slot), valuedOrdinals(line));
  return Math.max(slot.promised, occurred, settled);
}

/** Ordinals up to the last one that holds a value; games hold the values where there is no minimum. */
function valuedOrdinals(line: LinePosition): number {
  if (earnsPerGame(line)) return 0;
  return line.values.findLastIndex((value) => value !== 0) + 1;
}

/** An occurrence line at a fixed price without a minimum earns evenly with the games played. */
export function earnsPerGame(line: LinePosition): boolean {
  return line.terms.kind === 'reads' && line.terms.gamesPlanned !== undefined;
}

export function readsOfSlot(line: LinePosition, slot: SlotPosition): SlotReads {
  const promised = promisedIn(line, slot);
  const madeGood = madeGoodIn(slot);
  const room = promised + slot.carriedIn - madeGood - removedFrom(slot);
  const given = Math.min(slot.counted, room);
  return {
    promised,
    owed: room - given,
    given,
    madeGood,
    credited: slot.credited,
    released: slot.released + slot.forfeited,
    carried: slot.carriedOut - slot.carriedIn,
    extra: slot.counted - given,
  };
}

/** The figures of a line's slots together. */
export function readsOfLine(line: LinePosition): SlotReads {
  const sum: SlotReads = { promised: 0, owed: 0, given: 0, madeGood: 0, credited: 0, released: 0, carried: 0, extra: 0 };
  for (const slot of line.slots) {
    const reads = readsOfSlot(line, slot);
    for (const name of Object.keys(sum) as (keyof SlotReads)[]) sum[name] += reads[name];
  }
  return sum;
}

/** Ordinals that have earned their value: given and made good, or games played. */
export function settledOrdinals(line: LinePosition): number {
  if (earnsPerGame(line)) return Math.min(line.gamesPlayed.length, line.values.length);
  const { given, madeGood } = readsOfLine(line);
  return given + madeGood;
}

/** Ordinals that are or can still be earned. */
export function ordinalsOf(line: LinePosition): number {
  if (earnsPerGame(line)) return line.values.length;
  const { owed, given, madeGood } = readsOfLine(line);
  return owed + given + madeGood;
}
