import { centsOf, splitByLargestRemainder } from '../../money.ts';

/** A season that a commitment reaches into. */
export interface SeasonOfPromise {
  readonly seasonId: string;
  /** games of the commitment that are still to be played there */
  readonly gamesToCome: number;
  /** reads of it that have a place there already */
  readonly placed: number;
}

/**
 * How many reads of a term's count are left for the other seasons it reaches into, while one of them is planned. The reads owed are
 * shared over the games still to come in all of them, and what has a place there already need not be kept once more.
 *
 * @param owed reads of the whole term that are owed, placed or not
 * @param seasons all of them, in their order; that one too
 */
export function keptForOthers(owed: number, seasons: readonly SeasonOfPromise[], seasonId: string): number {
  if (seasons.every((season) => season.gamesToCome === 0)) return 0;
  const shares = splitByLargestRemainder(centsOf(owed), seasons.map((season) => season.gamesToCome));
  return seasons.reduce((sum, season, place) => (season.seasonId === seasonId ? sum : sum + Math.max(0, shares[place]! - season.placed)), 0);
}
