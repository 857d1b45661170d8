import { describe, expect, test } from 'vitest';
import { dayOf } from '../../server/domain/day.ts';
import { centsOf } from '../../server/domain/money.ts';
import type { ContractTerms, LineTerms } from '../../server/domain/sponsorship/contract-terms.ts';
import { OFFER_MOVES, assertOfferMove, offerStateOn } from '../../server/domain/sponsorship/offers/offer-moves.ts';
import type { OfferMove, OfferState } from '../../server/domain/sponsorship/offers/offer-moves.ts';
import { offeredValues } from '../../server/domain/sponsorship/offers/offered-values.ts';
import { pricesOfYears } from '../../server/domain/sponsorship/offers/prices-of-years.ts';

describe('what may be done to an offer', () => {
  test.each<[OfferMove, OfferState[]]>([
    ['change', ['draft']],
    ['delete', ['draft']],
    ['put', ['draft']],
    ['extend', ['open']],
    ['withdraw', ['open', 'lapsed']],
    ['decline', ['open', 'lapsed']],
    ['accept', ['open']],
    ['draftContract', ['open']],
  ])('%s is for an offer that is %j', (move, states) => {
    const allowed = (Object.keys(OFFER_MOVES[move]) as OfferState[]).filter((state) => OFFER_MOVES[move][state] === 'yes');
    expect(allowed).toEqual(states);
  });

  test('an offer holds through its last day and has lapsed on the next', () => {
    const offer = { state: 'open' as const, lapsesOn: dayOf('2026-12-11') };
    expect(offerStateOn(offer, dayOf('2026-12-11'))).toBe('open');
    expect(offerStateOn(offer, dayOf('2026-12-12'))).toBe('lapsed');
    expect(offerStateOn({ ...offer, state: 'accepted' }, dayOf('2026-12-12'))).toBe('accepted');
    expect(offerStateOn({ ...offer, state: 'draft' }, dayOf('2026-12-12'))).toBe('draft');
  });

  test('a refusal says on which day the offer lapsed', () => {
    expect(() => assertOfferMove('accept', 'lapsed', dayOf('2026-12-11'))).toThrow('lapsed on 2026-12-11');
    expect(() => assertOfferMove('accept', 'accepted', dayOf('2026-12-11'))).toThrow('accepted already');
  });
});

describe('what an offer is worth, line by line', () => {
  const read = (lineId: string, reads: number, rateCents: number): LineTerms => ({ kind: 'reads', lineId, name: lineId, counting: 'perTerm', pricing: 'fixed', reads, rateCents: centsOf(rateCents) });
  const terms = (priceCents: number, lines: LineTerms[]): ContractTerms => ({ contractId: 'offer', priceCents: centsOf(priceCents), cancelledGame: 'credit', lines });

  test('the price is shared by count and rate, and the earlier reads of a line are a cent more', () => {
    const values = offeredValues(terms(10_000, [read('game ball', 3, 7500), read('concession', 2, 4000)]));
    expect(values.map(({ valueCents, each }) => [valueCents, each])).toEqual([
      [7377, [{ count: 3, cents: 2459 }]],
      [2623, [{ count: 1, cents: 1312 }, { count: 1, cents: 1311 }]],
    ]);
  });

  test.each([0, 1, 99, 70_000, 123_457])('the lines and the reads add up to %i cents', (priceCents) => {
    const values = offeredValues(terms(priceCents, [read('game ball', 7, 7500), read('concession', 13, 3333), { kind: 'benefit', lineId: 'banner', name: 'Banner', quantity: 2, rateCents: centsOf(19_999), earns: 'onDelivery' }]));
    expect(values.reduce((sum, line) => sum + line.valueCents, 0)).toBe(priceCents);
    for (const line of values) expect(line.each.reduce((sum, { count, cents }) => sum + count * cents, 0)).toBe(line.valueCents);
  });

  test('a line priced by the read is worth its own price each time, and takes no share', () => {
    const perRead: LineTerms = { ...(read('bank shot', 12, 500) as LineTerms & { kind: 'reads' }), pricing: 'perRead', priceEachCents: centsOf(450) };
    expect(offeredValues(terms(0, [perRead]))).toMatchObject([{ valueCents: 5400, each: [{ count: 12, cents: 450 }], isPricedByRead: true }]);
  });

  test('what cannot be signed has no values', () => {
    expect(() => offeredValues(terms(100, [read('game ball', 3, 0)]))).toThrow('rates are zero');
    expect(() => offeredValues(terms(100, []))).toThrow('at least one');
  });
});

describe('the prices of several years', () => {
  test.each<[number, number, number, number[]]>([
    [120_000, 300, 3, [120_000, 123_600, 127_308]],
    [120_000, 0, 2, [120_000, 120_000]],
    // 33.35 and 3 % are 34.3505: half a cent and more goes up, less goes down
    [3335, 300, 2, [3335, 3435]],
    [50, 100, 2, [50, 51]],
    [49, 100, 2, [49, 49]],
    [0, 10_000, 2, [0, 0]],
    [100, 10_000, 5, [100, 200, 400, 800, 1600]],
  ])('%i cents with %i hundredths of a percent over %i years', (price, increase, years, prices) => {
    expect(pricesOfYears(centsOf(price), increase, years)).toEqual(prices);
  });
});
