import type { Day } from '../day.ts';
import type { LinePosition } from '../sponsorship/position.ts';
import { expectedReads } from '../sponsorship/standing.ts';
import type { ReadThatStands } from './reads-that-stand.ts';

/** Reads that should have been given by the end of a day, and those that were. */
export interface PaceOnDay {
  readonly on: Day;
  readonly expected: number;
  readonly given: number;
}

export interface PaceOfLine {
  readonly line: LinePosition;
  /** the commitment's games of the term */
  readonly gamesInAll: number;
  /** the days of those that were played, one for each game */
  readonly playedOn: readonly Day[];
  readonly reads: readonly ReadThatStands[];
  /** given and made good in all; what no read of the log stands for was given before the books began */
  readonly settled: number;
  /** on occurrence: the day of each happening that counts */
  readonly occurredOn: readonly Day[];
}

/**
 * Pace by the day of games: even over the games of the commitment; on occurrence by what fell. Given are the promised
 * reads that were given or made good; extra ones do not run ahead of a promise.
 */
export function paceByDay({ line, gamesInAll, playedOn, reads, settled, occurredOn }: PaceOfLine): PaceOnDay[] {
  const given = reads.flatMap((read) => (read.on !== null && read.settles > 0 ? [{ on: read.on, settles: read.settles }] : []));
  const days = [...new Set([...playedOn, ...given.map((read) => read.on)])].sort();
  const before = settled - given.reduce((sum, read) => sum + read.settles, 0);
  return days.map((on) => ({
    on,
    expected: expectedReads(line, { gamesInAll, gamesPlayed: playedOn.filter((day) => day <= on).length, occurrences: occurredOn.filter((day) => day <= on).length }),
    given: before + given.reduce((sum, read) => sum + (read.on <= on ? read.settles : 0), 0),
  }));
}
