import type { Forecast } from '../planning/forecast.ts';
import { turnedInto } from './chance.ts';
import { rangeOf } from './final-count.ts';
import type { FinalCount } from './final-count.ts';

/** What a commitment on occurrence has come to so far. */
export interface MentionsSoFar {
  /** happenings counted */
  readonly occurrences: number;
  /** given and made good */
  readonly settled: number;
  /** credited, released and carried away, less what was carried in */
  readonly removed: number;
  /** owed even when fewer happen */
  readonly atLeast: number;
  /** owed at most, however many happen; null: every one */
  readonly atMost: number | null;
}

/** Beyond this no chance is worth naming. */
const NEGLIGIBLE = 1e-12;

/**
 * How many mentions will have been given, where each happening to come is answered by a mention: the negative binomial
 * of the games left, between the least and the most that were promised. A happening that was missed stays owed.
 */
export function mentionForecast(so: MentionsSoFar, toCome: Pick<Forecast, 'chanceOfAtLeast'>): FinalCount {
  const happen = chancesOf(toCome);
  const promisedAfter = (more: number): number => Math.max(so.atLeast, Math.min(so.atMost ?? Infinity, so.occurrences + more), so.settled + so.removed) - so.removed;
  const finalAfter = (more: number): number => Math.min(promisedAfter(more), so.settled + more);
  const chanceAllGiven = happen.reduce((sum, chance, more) => sum + (finalAfter(more) >= promisedAfter(more) ? chance : 0), 0);
  return { chanceAllGiven: Math.min(1, chanceAllGiven), ...rangeOf(turnedInto(happen, finalAfter)) };
}

/** Chances of 0, 1, 2 … more happenings; the last stands for all that is beyond it. */
function chancesOf({ chanceOfAtLeast }: Pick<Forecast, 'chanceOfAtLeast'>): number[] {
  const chances: number[] = [];
  for (let more = 0, left = 1; ; more += 1) {
    const beyond = chanceOfAtLeast(more + 1);
    if (beyond < NEGLIGIBLE) return [...chances, left];
    chances.push(left - beyond);
    left = beyond;
  }
}
