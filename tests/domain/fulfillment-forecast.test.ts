import negativeBinomialCdf from '@stdlib/stats-base-dists-negative-binomial-cdf';
import negativeBinomialPmf from '@stdlib/stats-base-dists-negative-binomial-pmf';
import poissonCdf from '@stdlib/stats-base-dists-poisson-cdf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { WEAK_BELIEF, forecastOf, learned } from '../../server/domain/planning/forecast.ts';
import { chanceOfAtLeast, expectedCount, quantile, sumOfCounts } from '../../server/domain/reports/chance.ts';
import { mentionWords, scheduledWords } from '../../server/domain/reports/forecast-words.ts';
import { mentionForecast } from '../../server/domain/reports/mention-forecast.ts';
import type { MentionsSoFar } from '../../server/domain/reports/mention-forecast.ts';
import { chancesOfCount } from '../../server/domain/reports/poisson-binomial.ts';
import { scheduledForecast } from '../../server/domain/reports/scheduled-forecast.ts';
import { chanceOfRead } from '../../server/domain/reports/window-record.ts';

const atMost = (chances: readonly number[], most: number): number => chances.slice(0, most + 1).reduce((sum, chance) => sum + chance, 0);

describe('how many of several reads are given', () => {
  test('of ten that are given half of the time, at most three are with the chance of 0.171875', () => {
    // Binomial(10, 0.5): P(X <= 3), section 11 of the checks.
    expect(atMost(chancesOfCount(Array(10).fill(0.5)), 3)).toBe(0.171875);
  });

  test('the chances of twenty alike are those of the binomial', () => {
    const choose = (of: number, count: number): number => Array.from({ length: count }, (_, place) => (of - place) / (place + 1)).reduce((product, one) => product * one, 1);
    const chances = chancesOfCount(Array(20).fill(0.85));
    chances.forEach((chance, count) => expect(chance).toBeCloseTo(choose(20, count) * 0.85 ** count * 0.15 ** (20 - count), 12));
  });

  test('every subset of up to twelve that are unlike comes to the same', () => {
    const unequal = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 12 });
    fc.assert(fc.property(unequal, (probabilities) => {
      const bySubset = Array<number>(probabilities.length + 1).fill(0);
      for (let subset = 0; subset < 2 ** probabilities.length; subset += 1) {
        const chance = probabilities.reduce((product, one, place) => product * ((subset >> place) & 1 ? one : 1 - one), 1);
        bySubset[[...subset.toString(2)].filter((bit) => bit === '1').length]! += chance;
      }
      const chances = chancesOfCount(probabilities);
      return chances.every((chance, count) => Math.abs(chance - bySubset[count]!) < 1e-12);
    }), { numRuns: 60, seed: 7 });
  });

  test('twenty thousand that are rarely given come near to a Poisson count', () => {
    const chances = chancesOfCount(Array(20_000).fill(3 / 20_000));
    // P(X <= 1) = 4e^-3, section 11 of the checks; Le Cam: no further off than the sum of the squared chances.
    for (const most of [0, 1, 3, 8]) expect(Math.abs(atMost(chances, most) - poissonCdf(most, 3))).toBeLessThan(20_000 * (3 / 20_000) ** 2);
    expect(poissonCdf(1, 3)).toBeCloseTo(4 * Math.exp(-3), 12);
  });

  test('none planned is none for certain, and what is certain is certain', () => {
    expect(chancesOfCount([])).toEqual([1]);
    expect(chancesOfCount([1, 0, 1])).toEqual([0, 0, 1, 0]);
  });

  test('a sum of two counts has the mean of both, and its range is where nine in ten lie', () => {
    const sum = sumOfCounts(chancesOfCount([0.2, 0.9]), chancesOfCount([0.5]));
    expect(expectedCount(sum)).toBeCloseTo(1.6, 12);
    expect([quantile(sum, 0.05), quantile(sum, 0.95), chanceOfAtLeast(sum, 0), chanceOfAtLeast(sum, 4)]).toEqual([1, 3, 1, 0]);
  });
});

describe('the record of a window', () => {
  test.each([
    [{ planned: 0, given: 0 }, 0.9],
    [{ planned: 5, given: 0 }, 0.45],
    [{ planned: 95, given: 95 }, 0.995],
    [{ planned: 95, given: 50 }, 0.545],
  ])('%o makes a chance of %d', (record, chance) => {
    expect(chanceOfRead(record)).toBeCloseTo(chance, 12);
  });
});

describe('scheduled reads', () => {
  const rest = { settled: 33, logged: 0, owed: 3, chances: [], makegoods: [], withoutPlace: [] };

  test.each([
    ['three planned that are given half of the time', { chances: [0.5, 0.5, 0.5] }, { chanceAllGiven: 0.125, expectedFinal: 34.5, low: 33, high: 36 }],
    ['four planned where three are owed', { chances: [0.5, 0.5, 0.5, 0.5] }, { chanceAllGiven: 0.3125, expectedFinal: 34.9, low: 33, high: 36 }],
    ['two logged already and one planned', { logged: 2, chances: [0.9] }, { chanceAllGiven: 0.9, expectedFinal: 35.9, low: 35, high: 36 }],
    ['none planned', {}, { chanceAllGiven: 0, expectedFinal: 33, low: 33, high: 33 }],
    ['nothing owed', { owed: 0 }, { chanceAllGiven: 1, expectedFinal: 33, low: 33, high: 33 }],
    ['one without a place, counted as if it got one', { owed: 1, withoutPlace: [0.9] }, { chanceAllGiven: 0.9, expectedFinal: 33.9, low: 33, high: 34 }],
    // Two missed are settled by three replacements: the first with the second, both only with the third.
    ['three replacements for two', { owed: 2, makegoods: [{ missed: 2, replacements: 3, given: 0, settled: 0, chances: [0.5, 0.5, 0.5] }] }, { chanceAllGiven: 0.125, expectedFinal: 33.6, low: 33, high: 35 }],
  ])('%s', (_, facts, expected) => {
    const told = scheduledForecast({ ...rest, ...facts });
    expect({ ...told, chanceAllGiven: Math.round(told.chanceAllGiven * 1e12) / 1e12 }).toEqual(expected);
  });

  test('say on what they rest, and that nothing is known where nothing is', () => {
    const ground = { owed: 3, logged: 0, planned: 2, withoutPlace: 1, shortfall: 0, windowReadsPlanned: 80, windowReadsGiven: 76 };
    expect(scheduledWords(ground)).toBe('Worked out from 2 reads planned for games to come; 1 read without a place yet, counted as if it got one; of the 80 reads planned in these windows on nights signed off this season 76 were given.');
    expect(scheduledWords({ ...ground, windowReadsPlanned: 0, windowReadsGiven: 0 })).toContain('no read of these windows has been planned on a night signed off yet, so nine in ten are assumed to be given');
    expect(scheduledWords({ ...ground, planned: 0, withoutPlace: 0, shortfall: 3 })).toBe('Worked out from 3 reads that can no longer be given as promised.');
    expect(scheduledWords({ ...ground, planned: 0, withoutPlace: 0 })).toBe('No game is left in which these reads could be given.');
    expect(scheduledWords({ ...ground, owed: 0 })).toBe('Everything that was promised is settled.');
  });
});

describe('mentions on occurrence', () => {
  const so: MentionsSoFar = { occurrences: 10, settled: 10, removed: 0, atLeast: 0, atMost: null };
  // P-05 of the checks: two a game are believed, ten fell in four games, six games are left: NB(12, 5/11).
  const toCome = forecastOf(learned(WEAK_BELIEF, { occurrences: 10, games: 4 }), 6);
  const [shape, p] = [12, 5 / 11];

  test('without least and most all that happens is read, and the range is that of the negative binomial', () => {
    const told = mentionForecast(so, toCome);
    expect(told.chanceAllGiven).toBeCloseTo(1, 9);
    // P-05: mean 14.4, quantiles 6 and 25.
    expect([told.expectedFinal, told.low, told.high]).toEqual([24.4, 16, 35]);
  });

  test('with a least, all is given when that many happen', () => {
    // P-05: P(Y >= 14) = 0.5242220107667.
    const told = mentionForecast({ ...so, atLeast: 24 }, toCome);
    expect(told.chanceAllGiven).toBeCloseTo(0.5242220107667, 10);
    expect(told.chanceAllGiven).toBeCloseTo(1 - negativeBinomialCdf(13, shape, p), 9);
  });

  test('with a most, what happens beyond it is no part of the promise', () => {
    const told = mentionForecast({ ...so, atMost: 20 }, toCome);
    const expected = Array.from({ length: 400 }, (_, more) => negativeBinomialPmf(more, shape, p) * Math.min(20, 10 + more)).reduce((sum, one) => sum + one, 0);
    expect(told.expectedFinal).toBeCloseTo(expected, 1);
    expect([told.high, told.chanceAllGiven]).toEqual([20, expect.closeTo(1, 9)]);
  });

  test('one that was missed stays owed unless so many happen that the most is read all the same', () => {
    expect(mentionForecast({ ...so, settled: 9 }, toCome).chanceAllGiven).toBe(0);
    // Eleven more make twenty: P(Y >= 11).
    expect(mentionForecast({ ...so, settled: 9, atMost: 20 }, toCome).chanceAllGiven).toBeCloseTo(1 - negativeBinomialCdf(10, shape, p), 9);
    expect(mentionForecast({ ...so, settled: 9, removed: 1 }, toCome).chanceAllGiven).toBeCloseTo(1, 9);
  });

  test('a season in which nothing happened, with no game left, leaves the least owed', () => {
    const none = forecastOf(learned(WEAK_BELIEF, { occurrences: 0, games: 14 }), 0);
    expect(mentionForecast({ occurrences: 0, settled: 0, removed: 0, atLeast: 4, atMost: 9 }, none)).toEqual({ chanceAllGiven: 0, expectedFinal: 0, low: 0, high: 0 });
    expect(mentionWords({ occurrences: 0, gamesCounted: 14, gamesLeft: 0, earlierGames: 0 })).toBe('None in 14 games counted so far, and no game is left that could bring more.');
    expect(mentionWords({ occurrences: 0, gamesCounted: 0, gamesLeft: 1, earlierGames: 0 })).toBe(
      'Worked out from no game counted yet and from a general assumption of two a game, because no earlier season is known; 1 game is left, and each time it happens a mention is assumed to be read.',
    );
  });
});
