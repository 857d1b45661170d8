import cdf from '@stdlib/stats-base-dists-negative-binomial-cdf';
import quantile from '@stdlib/stats-base-dists-negative-binomial-quantile';
import { describe, expect, test } from 'vitest';
import { WEAK_BELIEF, beliefBefore, forecastOf, learned } from '../../server/domain/planning/forecast.ts';

test('two a game are believed, ten fell in four games, six games are left: about fourteen more', () => {
  const belief = learned(WEAK_BELIEF, { occurrences: 10, games: 4 });
  expect(belief).toEqual({ shape: 12, rate: 5 });
  const { mean, low, middle, high, chanceOfAtLeast } = forecastOf(belief, 6);
  // P-05 of the checks: NB(r = 12, p = 5/11), by recurrence and by @stdlib.
  expect(mean).toBeCloseTo(14.4, 12);
  expect(chanceOfAtLeast(14)).toBeCloseTo(0.5242220107667, 12);
  expect([low, middle, high]).toEqual([6, 14, 25]);
});

test('of two successes at one half, at most one failure comes before them half of the time', () => {
  // P-06 of the checks: NB(2, 0.5), by hand 0.25 + 0.25.
  expect(1 - forecastOf({ shape: 2, rate: 1 }, 1).chanceOfAtLeast(2)).toBeCloseTo(0.5, 14);
});

describe('against @stdlib/stats', () => {
  const cells = [0.5, 2, 12, 40, 400].flatMap((shape) => [0.5, 1, 5, 30].flatMap((rate) => [1, 6, 14, 60].map((games) => ({ shape, rate, games }))));

  test.each(cells)('shape $shape, rate $rate, $games games left', ({ shape, rate, games }) => {
    const p = rate / (rate + games);
    const told = forecastOf({ shape, rate }, games);
    for (const count of [0, 1, 5, Math.round(told.mean), Math.round(told.mean * 2)]) expect(1 - told.chanceOfAtLeast(count + 1)).toBeCloseTo(cdf(count, shape, p), 9);
    for (const [ours, chance] of [[told.low, 0.05], [told.middle, 0.5], [told.high, 0.95]] as const) {
      // Where a sum is the chance to the last digit, as P(Y <= 39) of NB(40, 0.5) is one half, rounding decides theirs.
      const isTie = Math.abs(cdf(ours, shape, p) - chance) < 1e-9;
      expect(quantile(chance, shape, p) - ours).toBeLessThanOrEqual(isTie ? 1 : 0);
      expect(quantile(chance, shape, p) - ours).toBeGreaterThanOrEqual(0);
    }
  });
});

test('where no game is left nothing more is expected', () => {
  const { mean, low, high, chanceOfAtLeast } = forecastOf({ shape: 12, rate: 5 }, 0);
  expect([mean, low, high, chanceOfAtLeast(0), chanceOfAtLeast(1)]).toEqual([0, 0, 0, 1, 0]);
});

test('thousands of happenings are no more than can be worked out', () => {
  const { middle } = forecastOf({ shape: 20_000, rate: 10 }, 10);
  expect(Math.abs(middle - 20_000)).toBeLessThan(5);
});

test.each([
  [{ occurrences: 0, games: 0 }, { shape: 2, rate: 1 }],
  [{ occurrences: 9, games: 3 }, { shape: 11, rate: 4 }],
  [{ occurrences: 12, games: 4 }, { shape: 14, rate: 5 }],
  [{ occurrences: 120, games: 40 }, { shape: 14, rate: 5 }],
  [{ occurrences: 0, games: 40 }, { shape: 2, rate: 5 }],
])('earlier games %o make the belief %o', (earlier, belief) => {
  expect(beliefBefore(earlier)).toEqual(belief);
});
