import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  amountInSentence,
  addCents,
  amountText,
  centsOf,
  shareOfCents,
  splitByLargestRemainder,
  splitEvenly,
  subtractCents,
  timesCents,
} from '../../server/domain/money.ts';
import type { Cents } from '../../server/domain/money.ts';

const cents = (amount: number): Cents => centsOf(amount);

describe('largest remainder', () => {
  test('the 1790 census gives the 120 seats of the vetoed bill', () => {
    // COMAP, For All Practical Purposes, ex. 14.6
    const states: [string, number, number][] = [
      ['VA', 630560, 21], ['MA', 475327, 16], ['PA', 432879, 14], ['NC', 353523, 12], ['NY', 331589, 11],
      ['MD', 278514, 9], ['CT', 236841, 8], ['SC', 206236, 7], ['NJ', 179570, 6], ['NH', 141822, 5],
      ['VT', 85533, 3], ['GA', 70835, 2], ['KY', 68705, 2], ['RI', 68446, 2], ['DE', 55540, 2],
    ];
    expect(states.reduce((sum, [, population]) => sum + population, 0)).toBe(3615920);
    expect(splitByLargestRemainder(cents(120), states.map(([, population]) => population))).toEqual(states.map(([, , seats]) => seats));
  });

  test('one seat more takes one from Alabama: the method is not monotone', () => {
    // Quotas of the 1880 census at 299 seats in thousandths, COMAP, For All Practical Purposes, ex. 14.7; the rest of the
    // union is put together in three blocks here.
    const quotas = [7646, 9640, 18640, 80700, 90700, 91674];
    expect(splitByLargestRemainder(cents(299), quotas).slice(0, 3)).toEqual([8, 9, 18]);
    expect(splitByLargestRemainder(cents(300), quotas).slice(0, 3)).toEqual([7, 10, 19]);
  });

  test('ten seats for six parties are 5, 2, 1, 1, 1, 0', () => {
    // the encyclopedia's example, from memory
    expect(splitByLargestRemainder(cents(10), [47000, 16000, 15800, 12000, 6100, 3100])).toEqual([5, 2, 1, 1, 1, 0]);
  });

  test.each([
    [10000, [1, 1, 1], [3334, 3333, 3333]],
    [100000, [1, 1, 1, 1, 1, 1, 1], [14286, 14286, 14286, 14286, 14286, 14285, 14285]],
    [250000, [8, 9, 11, 7, 5], [50000, 56250, 68750, 43750, 31250]],
    [10000, [50, 25, 75], [3333, 1667, 5000]], // relative stand-alone price: ASC 606 Example 33, from memory
    [70000, [450, 320], [40909, 29091]],
    [1, [1, 1], [1, 0]],
    [-10000, [1, 1, 1], [-3334, -3333, -3333]],
    [5, [0, 1, 0], [0, 5, 0]],
    [0, [1, 2], [0, 0]],
  ])('%i cents by %j come to %j', (amount, weights, parts) => {
    expect(splitByLargestRemainder(cents(amount), weights)).toEqual(parts);
  });

  test('parts always add up to the whole, and none is a cent off its quota', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e12, max: 1e12 }), fc.array(fc.nat(1e6), { minLength: 1, maxLength: 40 }), (amount, weights) => {
        fc.pre(weights.some((weight) => weight > 0));
        const parts = splitByLargestRemainder(cents(amount), weights);
        const total = weights.reduce((sum, weight) => sum + weight, 0);
        expect(addCents(...parts)).toBe(amount === 0 ? 0 : amount);
        parts.forEach((part, place) => expect(Math.abs(part - (amount * (weights[place] ?? 0)) / total)).toBeLessThan(1.001));
      }),
      { numRuns: 300 },
    );
  });

  test('nothing is split over no parts, broken weights or zero weights', () => {
    for (const weights of [[], [0, 0], [-1, 2], [0.5]]) expect(() => splitByLargestRemainder(cents(100), weights)).toThrow(RangeError);
    expect(splitEvenly(cents(100), 3)).toEqual([34, 33, 33]);
  });
});

describe('amounts', () => {
  test.each([
    [700, 500, 35],
    [35000, 500, 1750],
    [5000, 725, 363],
    [120000, 725, 8700],
    [10, 500, 1],
    [9, 500, 0],
    [-10, 500, -1],
    [0, 725, 0],
  ])('%i cents at %i basis points are %i, half a cent going up', (amount, basisPoints, share) => {
    expect(shareOfCents(cents(amount), basisPoints)).toBe(share);
  });

  test('a cent beyond what is held exactly throws instead of being lost', () => {
    const most = cents(Number.MAX_SAFE_INTEGER);
    expect(addCents(most, cents(0))).toBe(most);
    expect(() => addCents(most, cents(1))).toThrow(RangeError);
    expect(() => timesCents(most, 2)).toThrow(RangeError);
    expect(() => centsOf(2 ** 53)).toThrow(RangeError);
    expect(() => centsOf(0.5)).toThrow(RangeError);
    expect(subtractCents(cents(1), cents(3))).toBe(-2);
  });

  test.each([[123_450, '$1,234.50'], [0, '$0.00'], [-1_200, '-$12.00'], [5, '$0.05']])('%i cents are %s in a sentence', (amount, text) => {
    expect(amountInSentence(cents(amount))).toBe(text);
  });

  test('zero has no sign', () => {
    expect(Object.is(centsOf(-0), 0)).toBe(true);
    expect(splitEvenly(cents(0), 2).every((part) => Object.is(part, 0))).toBe(true);
  });

  test.each([[0, '0.00'], [5, '0.05'], [-5, '-0.05'], [123456, '1,234.56'], [100000000, '1,000,000.00'], [99999, '999.99']])('%i is written %s', (amount, text) => {
    expect(amountText(cents(amount))).toBe(text);
  });
});
