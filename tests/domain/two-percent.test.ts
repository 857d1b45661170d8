import { expect, test } from 'vitest';
import { centsOf } from '../../server/domain/money.ts';
import { twoPercentOf } from '../../server/domain/sponsorship/two-percent.ts';

const dollars = (amount: number) => centsOf(Math.round(amount * 100));
const judged = (payment: number, ...benefits: number[]) => twoPercentOf(dollars(payment), benefits.map(dollars));

/** 26 CFR 1.513-4(c)(2)(ii): within two percent nothing counts, above it everything does. */
test.each([
  [5_000, 100, true, 5_000],
  [5_000, 100.01, false, 4_899.99],
  [1_000, 20, true, 1_000],
  [1_000, 20.01, false, 979.99],
])('a payment of $%d with benefits of $%d', (payment, benefits, isDisregarded, qualified) => {
  expect(judged(payment, benefits)).toMatchObject({ isDisregarded, qualifiedCents: dollars(qualified) });
});

/** The worked examples that turn on money, 26 CFR 1.513-4(f), figures from memory. */
test('example 4: passes of $6,000 and advertising of $10,000 beside a million are disregarded', () => {
  expect(judged(1_000_000, 6_000, 10_000)).toMatchObject({ lineCents: dollars(20_000), benefitsCents: dollars(16_000), isDisregarded: true, qualifiedCents: dollars(1_000_000) });
});

test('example 8: tickets of $85 and a line of advertising of $15 beside $1,000 count in full', () => {
  expect(judged(1_000, 85, 15)).toMatchObject({ lineCents: dollars(20), benefitsCents: dollars(100), isDisregarded: false, returnCents: dollars(100), qualifiedCents: dollars(900) });
});

test('examples 2, 3, 6, 7, 9 and 12: a benefit above the line leaves only the rest of the payment', () => {
  expect(judged(10_000, 1_200)).toMatchObject({ isDisregarded: false, qualifiedCents: dollars(8_800) });
});

test('examples 1, 5 and 11: goods count as payment, and what is worth nothing else takes nothing away', () => {
  expect(judged(2_500)).toMatchObject({ isDisregarded: true, qualifiedCents: dollars(2_500) });
  expect(judged(2_500, 49.99)).toMatchObject({ isDisregarded: true, qualifiedCents: dollars(2_500) });
});

test('the line is rounded down, so that no fraction of a cent is given away', () => {
  expect(judged(1_234.56, 24.69)).toMatchObject({ lineCents: dollars(24.69), isDisregarded: true });
  expect(judged(1_234.56, 24.7).isDisregarded).toBe(false);
});

test('benefits worth more than the payment leave nothing qualified, never less than nothing', () => {
  expect(judged(100, 150)).toMatchObject({ returnCents: dollars(150), qualifiedCents: 0 });
  expect(judged(0)).toMatchObject({ lineCents: 0, isDisregarded: true, qualifiedCents: 0 });
});
