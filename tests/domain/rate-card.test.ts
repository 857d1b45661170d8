import { describe, expect, test } from 'vitest';
import { centsOf } from '../../server/domain/money.ts';
import type { ContractTerms } from '../../server/domain/sponsorship/contract-terms.ts';
import { cardWorth } from '../../server/domain/sponsorship/packages/card-worth.ts';
import { rateCardCopy } from '../../server/domain/sponsorship/packages/rate-card-copy.ts';

const ball = (priceCents: number) => ({ readKindId: 'ball', benefitName: null, priceCents });
const banner = (priceCents: number) => ({ readKindId: null, benefitName: 'Banner', priceCents });

describe('a rate card copied to another season', () => {
  test.each([
    ['as it is', 0, 7_500, 7_500],
    ['three percent higher', 300, 7_500, 7_725],
    ['half a cent up', 50, 100, 101],
    ['less than half a cent not', 49, 100, 100],
    ['twice as high', 10_000, 7_500, 15_000],
  ])('is %s', (_name, increase, before, after) => {
    expect(rateCardCopy([ball(before)], [], increase).toCopy).toEqual([ball(after)]);
  });

  test('leaves a price that is there already, of a read kind or of a benefit', () => {
    const { toCopy, alreadySet } = rateCardCopy([ball(7_500), banner(40_000)], [banner(45_000)], 300);
    expect(toCopy).toEqual([ball(7_725)]);
    expect(alreadySet).toEqual([banner(45_000)]);
  });
});

describe('what a bundle would cost one by one', () => {
  const read = { kind: 'reads', name: 'Read', pricing: 'fixed', rateCents: centsOf(4_000) } as const;
  test.each([
    ['twelve reads of the term', { ...read, lineId: 'a', counting: 'perTerm', reads: 12 }, 12, 48_000],
    ['one in each of three games', { ...read, lineId: 'a', counting: 'perGame', reads: 1, games: [1, 2, 3].map((game) => ({ gameId: `${game}`, reads: 1 })) }, 3, 12_000],
    ['at least five on occurrence', { ...read, lineId: 'a', counting: 'onOccurrence', reads: 0, readsAtLeast: 5 }, 5, 20_000],
    ['as they come, by the game', { ...read, lineId: 'a', counting: 'onOccurrence', reads: 0, gamesPlanned: 14 }, 14, 56_000],
    ['two banners', { kind: 'benefit', lineId: 'a', name: 'Banner', quantity: 2, rateCents: centsOf(40_000), earns: 'onDelivery' }, 2, 80_000],
  ] as const)('of %s', (_name, line, count, worthCents) => {
    const terms = { contractId: 'p', priceCents: centsOf(0), cancelledGame: 'credit', lines: [line] } as unknown as ContractTerms;
    expect(cardWorth(terms)).toEqual([{ lineId: 'a', count, worthCents }]);
  });
});
