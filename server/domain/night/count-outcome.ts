import type { LogEntry } from './log-entry.ts';

/** Whether and why an entry counts as a read. Only `counts` moves a read from owed to given. */
export type CountOutcome =
  | 'counts'
  /** somebody else logged the same read first; kept, marked as double */
  | 'double'
  /** cut short, the director has not yet decided */
  | 'cutShortOpen'
  /** cut short, and the director decided that it does not count */
  | 'cutShortNotCounted'
  | 'notRead'
  /** a mention with no happening logged for it; a person decides */
  | 'noHappening'
  /** a sponsor read that names no game */
  | 'noGame';

/** The director's word on entries that need one: cut short, or a mention without a happening. */
export type Decisions = ReadonlyMap<string, 'counts' | 'doesNotCount'>;

/** What an entry comes to before anybody else's is looked at. */
export function voicedOutcome(entry: LogEntry, decisions: Decisions): CountOutcome {
  if (entry.outcome === 'notRead' || entry.outcome === null) return 'notRead';
  if (entry.gameId === null) return 'noGame';
  if (entry.outcome === 'given') return 'counts';
  const decision = decisions.get(entry.id);
  if (decision === undefined) return 'cutShortOpen';
  return decision === 'counts' ? 'counts' : 'cutShortNotCounted';
}
