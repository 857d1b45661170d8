import type { LogEntry } from './log-entry.ts';
import { takenBackIds } from './take-back.ts';

/** A read that was planned, by what the table logs it under. */
export interface PlannedCue {
  readonly cueKey: string;
  readonly gameId: string | null;
  readonly placementId: string | null;
}

export type TalliedEntry = Pick<LogEntry, 'id' | 'kind' | 'outcome' | 'cueKey' | 'gameId' | 'placementId' | 'commitmentId' | 'takesBackEntryId'>;

/** A night in numbers, all in reads. */
export interface NightTally {
  readonly planned: number;
  readonly read: number;
  readonly cutShort: number;
  readonly notRead: number;
  /** planned, and nothing was logged */
  readonly unlogged: number;
  /** sponsors' reads given that nobody had planned */
  readonly beyondThePlan: number;
  readonly mentions: number;
}

const BEST_FIRST = ['given', 'cutShort', 'notRead'] as const;

/** Whether an entry is about this planned read. */
export function isAbout(entry: Pick<TalliedEntry, 'placementId' | 'cueKey' | 'gameId'>, cue: PlannedCue): boolean {
  if (cue.placementId !== null && entry.placementId === cue.placementId) return true;
  return entry.cueKey === cue.cueKey && (entry.gameId === cue.gameId || entry.gameId === null);
}

/**
 * What became of the planned reads, each told once however often it was logged: given outweighs cut short, cut short
 * outweighs not read. Entries taken back are left out.
 */
export function tallyOfNight(planned: readonly PlannedCue[], entries: readonly TalliedEntry[]): NightTally {
  const gone = takenBackIds(entries);
  const stand = entries.filter((entry) => entry.kind !== 'takenBack' && !gone.has(entry.id));
  const reads = stand.filter((entry) => entry.kind === 'read');
  const outcomes = planned.map((cue) => {
    const about = reads.filter((entry) => isAbout(entry, cue));
    return BEST_FIRST.find((outcome) => about.some((entry) => entry.outcome === outcome)) ?? null;
  });
  const of = (outcome: string | null): number => outcomes.filter((one) => one === outcome).length;
  const others = reads.filter((entry) => entry.outcome === 'given' && entry.commitmentId !== null && !planned.some((cue) => isAbout(entry, cue)));
  return {
    planned: planned.length,
    read: of('given'),
    cutShort: of('cutShort'),
    notRead: of('notRead'),
    unlogged: of(null),
    beyondThePlan: new Set(others.map((entry) => `${entry.gameId} ${entry.cueKey}`)).size,
    mentions: stand.filter((entry) => entry.kind === 'mention' && entry.outcome === 'given').length,
  };
}

const plural = (count: number, one: string): string => `${count} ${one}${count === 1 ? '' : 's'}`;

/** "24 reads planned: 22 read, 1 cut short, 1 not read. 3 mentions." Numbers that are zero are left out, save for what was read. */
export function sentenceOfTally(tally: NightTally): string {
  const parts = [
    `${tally.read} read`,
    tally.cutShort > 0 && `${tally.cutShort} cut short`,
    tally.notRead > 0 && `${tally.notRead} not read`,
    tally.unlogged > 0 && `${tally.unlogged} without an entry`,
  ].filter(Boolean);
  const planned = tally.planned === 0 ? 'No read was planned.' : `${plural(tally.planned, 'read')} planned: ${parts.join(', ')}.`;
  const more = tally.beyondThePlan > 0 ? ` ${plural(tally.beyondThePlan, 'read')} more than planned.` : '';
  return `${planned}${more}${tally.mentions > 0 ? ` ${plural(tally.mentions, 'mention')}.` : ''}`;
}
