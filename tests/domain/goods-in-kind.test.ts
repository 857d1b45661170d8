import { expect, test } from 'vitest';
import { assertGoodsMeetPrice, goodsTotal, isGoodsLate, valueOfDelivery } from '../../server/domain/billing/goods.ts';
import type { GoodsPromise } from '../../server/domain/billing/goods.ts';
import { dayOf } from '../../server/domain/day.ts';
import { centsOf } from '../../server/domain/money.ts';
import { Refused } from '../../server/domain/refusals.ts';

/** ASC 606-10-32-21: goods count at their fair value when the contract was signed (from memory). */
const promised = (id: string, quantity: number, unitCents: number, received = 0): GoodsPromise => ({ id, what: 'Game balls', quantity, unitCents: centsOf(unitCents), dueOn: dayOf('2027-01-15'), received });

const answerOf = (run: () => unknown): unknown => {
  try {
    return run() ?? 'fits';
  } catch (failure) {
    return (failure as Refused).code;
  }
};

test.each([
  ['twelve at 50.00 for 600.00', [promised('a', 12, 5_000)], 60_000, 'fits'],
  ['twelve at 50.00 for 600.12', [promised('a', 12, 5_000)], 60_012, 'goods-miss-the-price'],
  ['twelve at 50.00 for 600.11, less than a cent each', [promised('a', 12, 5_000)], 60_011, 'fits'],
  ['seven at 85.71 for 600.00', [promised('a', 7, 8_571)], 60_000, 'fits'],
  ['seven at 85.72 for 600.00', [promised('a', 7, 8_572)], 60_000, 'fits'],
  ['seven at 85.70 for 600.00', [promised('a', 7, 8_570)], 60_000, 'goods-miss-the-price'],
  ['two kinds', [promised('a', 10, 5_000), promised('b', 4, 2_500)], 60_000, 'fits'],
])('%s answers as it comes to the price', (_, promises, priceCents, answer) => {
  expect(answerOf(() => assertGoodsMeetPrice(promises, centsOf(priceCents)))).toBe(answer);
});

test.each([
  ['the first three of seven', [promised('a', 7, 8_571)], 3, 60_000, 25_713],
  ['the last four take the rounding', [promised('a', 7, 8_571, 3)], 4, 34_287, 34_287],
  ['all of them, while another kind is still to come', [promised('a', 7, 8_571), promised('b', 1, 3)], 7, 60_000, 59_997],
  ['more than are still to come', [promised('a', 7, 8_571, 3)], 5, 34_287, 'more-goods-than-promised'],
  ['what was billed or let go meanwhile', [promised('a', 7, 8_571, 3)], 4, 0, 'goods-settled'],
  ['a banner worth nothing, when all else is there', [promised('a', 1, 0)], 1, 0, 0],
  ['more than the price has left, where some was recorded otherwise', [promised('a', 7, 8_571)], 3, 10_000, 10_000],
])('a delivery of %s is worth what it should', (_, promises, quantity, openCents, worth) => {
  expect(answerOf(() => valueOfDelivery(promises, 'a', quantity, centsOf(openCents)))).toBe(worth);
});

test('goods the contract does not promise are refused', () => {
  expect(answerOf(() => valueOfDelivery([promised('a', 7, 8_571)], 'b', 1, centsOf(1)))).toBe('unknown-goods-promise');
});

test.each([
  ['on their day', 6, '2027-01-15', false],
  ['the day after', 6, '2027-01-16', true],
  ['the day after, but all there', 7, '2027-01-16', false],
])('goods are late: %s', (_, received, today, late) => {
  expect(isGoodsLate(promised('a', 7, 8_571, received), dayOf(today))).toBe(late);
  expect(goodsTotal([promised('a', 7, 8_571)])).toBe(59_997);
});
