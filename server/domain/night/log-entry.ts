import type { Instant } from '../instant.ts';
import { ENTRY_RULES } from './entry-rules.ts';
import type { KindRefusal } from './entry-rules.ts';

/** What the table can log. `read` and `mention` carry an outcome; `takenBack` names the entry it takes back. */
export const ENTRY_KINDS = [
  'read',
  'mention',
  'happening',
  'foul',
  'basket',
  'substitution',
  'timeOut',
  'periodEnd',
  /** points that no single player's basket made: a touchdown, a goal, a rally; `detail.points`, `detail.what` */
  'score',
  'serve',
  'batter',
  /** `detail.weightClass`, `detail.how`, `detail.points` */
  'bout',
  /** the official scorer's count: `detail.agrees`, else `detail.words` */
  'book',
  /** `detail.state` begun, flash or ended; `detail.situation` */
  'hold',
  /** `detail.what` start or halftime; `detail.clock` `HH:MM` or `detail.seconds` */
  'timeMoved',
  /** who wears a number tonight: `detail.name`, `detail.sayAs`, `detail.wornInstead` the number on the list; `detail.isNotListed` instead of a name for
   * somebody who is not on our list */
  'worn',
  /** asked at the table: `detail.requestKind`, `detail.fields`, `detail.text` */
  'request',
  /** `detail.requestId`, `detail.answer` approved, declined, read or expired */
  'requestAnswered',
  'note',
  'takenBack',
] as const;
export type EntryKind = (typeof ENTRY_KINDS)[number];

export const READ_OUTCOMES = ['given', 'cutShort', 'notRead'] as const;
export type ReadOutcome = (typeof READ_OUTCOMES)[number];

/** Why a read was not given in full; `other` asks for words in `detail.words`. */
export const NOT_READ_REASONS = [
  'noTime',
  'playResumed',
  'injury',
  'emergency',
  'equipment',
  'copyMissing',
  'heldByDirector',
  'gameEnded',
  'forgotten',
  'other',
] as const;
export type NotReadReason = (typeof NOT_READ_REASONS)[number];

/** One entry of a night's log. The stored row satisfies it; nothing of it ever changes. */
export interface LogEntry {
  readonly id: string;
  readonly nightId: string;
  readonly gameId: string | null;
  /** the place in the night's log, 1 and up, given in the order of arrival */
  readonly number: number;
  readonly deviceId: string;
  /** the place on the device, 1 and up */
  readonly sequence: number;
  readonly kind: EntryKind;
  readonly outcome: ReadOutcome | null;
  readonly reason: string | null;
  readonly cueKey: string | null;
  readonly occurrence: number | null;
  readonly placementId: string | null;
  readonly commitmentId: string | null;
  readonly teamId: string | null;
  readonly playerId: string | null;
  readonly playerNumber: string | null;
  readonly period: string | null;
  /** what the game clock showed, `M:SS`; shown and matched, never the order of the log */
  readonly clock: string | null;
  readonly detail: Readonly<Record<string, unknown>> | null;
  /** the happening a mention answers */
  readonly happeningEntryId: string | null;
  readonly takesBackEntryId: string | null;
  /** by the device's clock; only shown */
  readonly occurredAt: Instant;
}

export type EntryRefusal =
  | KindRefusal
  | 'read-without-cue'
  | 'read-without-game'
  | 'read-without-outcome'
  | 'read-without-reason'
  | 'outcome-without-read';

/**
 * Why an entry is refused for what it says by itself, or null. An entry whose night is signed off, that
 * comes late or doubles another is never refused: it is kept and settled by a person.
 */
export function whyNotEntry(
  entry: Pick<
    LogEntry,
    'kind' | 'outcome' | 'reason' | 'cueKey' | 'gameId' | 'commitmentId' | 'teamId' | 'playerNumber' | 'detail' | 'takesBackEntryId'
  >,
): EntryRefusal | null {
  if (entry.kind === 'read' || entry.kind === 'mention') {
    if (entry.outcome === null) return 'read-without-outcome';
    if (entry.outcome !== 'given' && (entry.reason ?? '').trim() === '') return 'read-without-reason';
    if (entry.kind === 'read' && (entry.cueKey ?? '') === '') return 'read-without-cue';
    return entry.commitmentId !== null && entry.gameId === null ? 'read-without-game' : null;
  }
  if (entry.outcome !== null) return 'outcome-without-read';
  return ENTRY_RULES[entry.kind]?.(entry) ?? null;
}

/** The name of a happening, such as `bankShot`; empty text where it has none. */
export function happeningOf(entry: Pick<LogEntry, 'detail'>): string {
  const name = entry.detail?.['happening'];
  return typeof name === 'string' ? name : '';
}

/** The log in its one order: by number. */
export function inOrder<Entry extends LogEntry>(entries: readonly Entry[]): Entry[] {
  return entries.toSorted((a, b) => a.number - b.number);
}
