import { chanceOfAtLeast, expectedCount, quantile } from './chance.ts';
import type { Chances } from './chance.ts';

/** How a commitment is likely to end. Counts are reads given and made good of the whole term. */
export interface FinalCount {
  /** that everything still owed is given, between 0 and 1 */
  readonly chanceAllGiven: number;
  /** to a tenth */
  readonly expectedFinal: number;
  /** nine in ten seasons like this end between these, both included */
  readonly low: number;
  readonly high: number;
}

/** @param chances of each final count @param all the count at which nothing is owed any more */
export function finalCountOf(chances: Chances, all: number): FinalCount {
  return { chanceAllGiven: chanceOfAtLeast(chances, all), ...rangeOf(chances) };
}

export function rangeOf(chances: Chances): Omit<FinalCount, 'chanceAllGiven'> {
  return { expectedFinal: Math.round(expectedCount(chances) * 10) / 10, low: quantile(chances, 0.05), high: quantile(chances, 0.95) };
}
