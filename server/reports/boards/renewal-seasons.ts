import type { Day } from '../../domain/day.ts';
import { refuse } from '../../domain/refusals.ts';

export interface SeasonRow {
  id: string;
  name: string;
  sport: string;
  startsOn: Day;
  endsOn: Day;
  followsSeasonId: string | null;
}

export interface TwoSeasons {
  season: SeasonRow | null;
  next: SeasonRow | null;
}

/**
 * The season asked for, else the one that is on or was last, and the one that comes after it: the one that was rolled over
 * from it, else the next of the same sport.
 *
 * @param seasons the latest first @throws Refused `not-found`
 */
export function seasonAndNext(seasons: readonly SeasonRow[], seasonId: string | undefined, today: Day): TwoSeasons {
  const begun = seasons.filter((one) => one.startsOn <= today);
  const season = seasonId === undefined ? (begun[0] ?? seasons.at(-1) ?? null) : (seasons.find((one) => one.id === seasonId) ?? refuse('not-found'));
  const after = seasons.filter((one) => season !== null && one.sport === season.sport && one.startsOn > season.endsOn);
  return { season, next: seasons.find((one) => season !== null && one.followsSeasonId === season.id) ?? after.at(-1) ?? null };
}
