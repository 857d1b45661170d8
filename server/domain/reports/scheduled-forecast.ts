import { sumOfCounts, turnedInto } from './chance.ts';
import { finalCountOf } from './final-count.ts';
import type { FinalCount } from './final-count.ts';
import { chancesOfCount } from './poisson-binomial.ts';

/** Replacements of a makegood that have places: N missed reads are settled by M of them. */
export interface ReplacementsToCome {
  readonly missed: number;
  readonly replacements: number;
  readonly given: number;
  readonly settled: number;
  /** the chance of each placed replacement */
  readonly chances: readonly number[];
}

export interface ScheduledRest {
  /** given and made good by now */
  readonly settled: number;
  /** logged as given on nights that are not signed off: they are counted as given */
  readonly logged: number;
  readonly owed: number;
  /** the chance of each read that has a place, replacements left out */
  readonly chances: readonly number[];
  readonly makegoods: readonly ReplacementsToCome[];
  /** the chance of each owed read that has no place yet: counted as if it got one; those that can get none are left out */
  readonly withoutPlace: readonly number[];
}

/**
 * How many of the promised reads will have been given: each read that has a place is given with the chance of its
 * window, each on its own, so that their number is Poisson-binomial. Never more than is owed: further ones are extra.
 * That the reads of one night are missed together is not looked at, so the range is rather too narrow than too wide.
 */
export function scheduledForecast({ settled, logged, owed, chances, makegoods, withoutPlace }: ScheduledRest): FinalCount {
  const own = chancesOfCount([...chances, ...withoutPlace]);
  const more = makegoods.reduce<number[]>((sum, makegood) => sumOfCounts(sum, settledBy(makegood)), own);
  return finalCountOf(turnedInto(more, (count) => settled + Math.min(owed, logged + count)), settled + owed);
}

/** Missed read i of N settles when replacement ⌈i × M / N⌉ of M is given. */
function settledBy({ missed, replacements, given, settled, chances }: ReplacementsToCome): number[] {
  return turnedInto(chancesOfCount(chances), (count) => Math.max(0, Math.min(missed, Math.floor(((given + count) * missed) / replacements)) - settled));
}
