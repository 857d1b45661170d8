import { happeningOf, inOrder } from './log-entry.ts';
import type { LogEntry } from './log-entry.ts';
import { takenBackIds } from './take-back.ts';

/** Two devices rarely see a game clock the same to the second. */
export const NEARBY_CLOCK_SECONDS = 8;

/** Which happenings a commitment counts. */
export interface OccurrenceTerms {
  readonly commitmentId: string;
  /** such as `bankShot` */
  readonly happening: string;
  readonly whose: 'ours' | 'both';
  /** one mention after several happenings counts once; otherwise once for each of them */
  readonly severalCountAsOne: boolean;
  /** the games the commitment covers; null for all games of the night */
  readonly gameIds: readonly string[] | null;
}

/** One happening, however many devices logged it. */
export interface Occurrence {
  readonly gameId: string;
  /** 1 and up in its game; a number stays with its happening even when that is taken back */
  readonly number: number;
  /** every entry that logged it, the first of them first */
  readonly entryIds: readonly string[];
  /** false once every entry of it is taken back, or a person said it is the same as another */
  readonly stands: boolean;
}

/** Two entries that may be one happening; a person says whether they are. */
export interface OpenQuestion {
  readonly entryIds: readonly [string, string];
}

/** What a person settled: this entry logged the same happening as that one, or a different one. */
export type Settled = ReadonlyMap<string, { readonly sameAs: string } | 'different'>;

/**
 * Numbers the happenings of a night that a commitment counts, game by game. Entries of two devices for
 * the same team, player and period with nearby clocks are one happening; where the clock, the player
 * or the period is missing on one of them the question is left to a person, and they count as two until it is answered.
 * Numbers go by the order of arrival, so entries that come after sign-off never renumber earlier ones.
 *
 * @param ourTeamIds the teams whose happenings count where the contract says "ours"
 */
export function numberOccurrences(
  entries: readonly LogEntry[],
  terms: OccurrenceTerms,
  ourTeamIds: readonly string[],
  settled: Settled = new Map(),
): { occurrences: Occurrence[]; open: OpenQuestion[] } {
  const gone = takenBackIds(entries);
  const groups: LogEntry[][] = [];
  const open: OpenQuestion[] = [];
  for (const entry of inOrder(entries)) {
    if (!countsFor(entry, terms, ourTeamIds)) continue;
    const answer = settled.get(entry.id);
    const candidates = answer === undefined ? groups.filter((group) => likeness(group, entry) !== 'other') : [];
    const same = candidates.find((group) => likeness(group, entry) === 'same');
    if (same) {
      same.push(entry);
      continue;
    }
    const asked = candidates.find((group) => !gone.has(group[0]!.id) && !settled.has(group[0]!.id));
    if (asked && !gone.has(entry.id)) open.push({ entryIds: [asked[0]!.id, entry.id] });
    groups.push([entry]);
  }
  const stands = standsByFirst(groups, settled, gone);
  const perGame = new Map<string, number>();
  const occurrences = groups.map((group) => {
    const gameId = group[0]!.gameId!;
    const number = (perGame.get(gameId) ?? 0) + 1;
    perGame.set(gameId, number);
    return { gameId, number, entryIds: group.map((entry) => entry.id), stands: stands.has(group[0]!.id) };
  });
  return { occurrences, open };
}

/**
 * The happenings that stand, by their first entry. One that a person called the same as another holds that one up and
 * no longer stands itself; the same as one that does not count, it does not count either.
 */
function standsByFirst(groups: readonly (readonly LogEntry[])[], settled: Settled, gone: ReadonlySet<string>): Set<string> {
  const firstOf = new Map(groups.flatMap((group) => group.map((entry) => [entry.id, group[0]!.id] as const)));
  const rootOf = (first: string): string | undefined => {
    let at: string | undefined = first;
    for (let step = 0; at !== undefined && step < groups.length; step += 1) {
      const answer = settled.get(at);
      if (typeof answer !== 'object') return at;
      at = firstOf.get(answer.sameAs);
    }
    return at;
  };
  const standing = groups.filter((group) => group.some((entry) => !gone.has(entry.id)));
  return new Set(standing.flatMap((group) => rootOf(group[0]!.id) ?? []));
}

function countsFor(entry: LogEntry, terms: OccurrenceTerms, ourTeamIds: readonly string[]): boolean {
  if (entry.kind !== 'happening' || entry.gameId === null || happeningOf(entry) !== terms.happening) return false;
  if (terms.gameIds !== null && !terms.gameIds.includes(entry.gameId)) return false;
  return terms.whose === 'both' || (entry.teamId !== null && ourTeamIds.includes(entry.teamId));
}

function likeness(group: readonly LogEntry[], entry: LogEntry): 'same' | 'maybe' | 'other' {
  const first = group[0]!;
  if (group.some((other) => other.deviceId === entry.deviceId)) return 'other';
  if (first.gameId !== entry.gameId) return 'other';
  const periodUnsure = (first.period === null) !== (entry.period === null);
  if (first.teamId !== entry.teamId || (!periodUnsure && first.period !== entry.period)) return 'other';
  const playerKnown = playerOf(first) !== null && playerOf(entry) !== null;
  if (playerKnown && playerOf(first) !== playerOf(entry)) return 'other';
  const one = secondsOfClock(first.clock);
  const two = secondsOfClock(entry.clock);
  if (one !== null && two !== null && Math.abs(one - two) > NEARBY_CLOCK_SECONDS) return 'other';
  return playerKnown && !periodUnsure && one !== null && two !== null ? 'same' : 'maybe';
}

function playerOf(entry: LogEntry): string | null {
  return entry.playerId ?? entry.playerNumber;
}

/** Seconds of a game clock `M:SS` or `MM:SS`; null where it is missing or unreadable. */
export function secondsOfClock(clock: string | null): number | null {
  const parts = /^(\d{1,2}):([0-5]\d)(?:\.\d)?$/.exec(clock ?? '');
  return parts ? Number(parts[1]) * 60 + Number(parts[2]) : null;
}
