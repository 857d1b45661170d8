import type { LogEntry } from './log-entry.ts';

/** What an entry says, as the log and a device's own copy of it can be compared. */
export type ComparedEntry = Pick<
  LogEntry,
  'kind' | 'outcome' | 'reason' | 'gameId' | 'cueKey' | 'teamId' | 'playerNumber' | 'period' | 'clock' | 'detail' | 'commitmentId' | 'placementId' | 'happeningEntryId' | 'takesBackEntryId' | 'occurredAt'
>;

const SAID = [
  ['outcome', 'how it was read'],
  ['reason', 'the reason'],
  ['playerNumber', 'the number'],
  ['period', 'the period'],
  ['clock', 'the game clock'],
] as const;

const NAMED = [
  ['gameId', 'another game'],
  ['cueKey', 'another cue'],
  ['teamId', 'another team'],
  ['commitmentId', 'another sponsor'],
  ['placementId', 'another planned read'],
  ['happeningEntryId', 'another happening'],
  ['takesBackEntryId', 'another entry to take back'],
] as const;

const spaced = (name: string): string => name.replace(/([a-z])([A-Z])/g, '$1 $2').toLowerCase();

/**
 * What one entry says differently from another, a line for each; the words are for a director. An id is never shown.
 *
 * @returns nothing where they say the same
 */
export function differencesInWords(inLog: ComparedEntry, aside: ComparedEntry): string[] {
  if (inLog.kind !== aside.kind) return [`It is another kind of entry: ${spaced(inLog.kind)} in the log, ${spaced(aside.kind)} here.`];
  const said = SAID.filter(([field]) => inLog[field] !== aside[field]).map(
    ([field, words]) => `It says ${words} differently: ${spaced(inLog[field] ?? 'nothing')} in the log, ${spaced(aside[field] ?? 'nothing')} here.`,
  );
  // What a device left out is filled in when it is stored; only something else is another.
  const named = NAMED.filter(([field]) => aside[field] !== null && inLog[field] !== aside[field]).map(([, words]) => `It names ${words}.`);
  const detail = sameRecord(inLog.detail, aside.detail) ? [] : ['It differs in what belongs to its kind.'];
  const moment = inLog.occurredAt === aside.occurredAt ? [] : ['The device gave it another hour.'];
  return [...said, ...named, ...detail, ...moment];
}

function sameRecord(one: LogEntry['detail'], other: LogEntry['detail']): boolean {
  return JSON.stringify(inOrder(one)) === JSON.stringify(inOrder(other));
}

function inOrder(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(inOrder);
  if (value === null || typeof value !== 'object') return value ?? null;
  return Object.fromEntries(Object.entries(value).toSorted(([a], [b]) => (a < b ? -1 : 1)).map(([key, item]) => [key, inOrder(item)]));
}
