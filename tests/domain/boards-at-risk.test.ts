import { describe, expect, test } from 'vitest';
import { atStakeCents, cheapestRepair, risksOf } from '../../server/domain/reports/at-risk.ts';
import type { PromiseAtRisk } from '../../server/domain/reports/at-risk.ts';
import { repairOptionsOf } from '../../server/domain/makegoods/repair-options.ts';

// Source of nine in ten and of the order of repairs: common practice, no source.
const promise = (more: Partial<PromiseAtRisk> = {}): PromiseAtRisk => ({ counting: 'perTerm', owed: 8, behind: 0, planned: 8, loggedNotSignedOff: 0, shortfall: 0, openShortfall: 0, brokenFloors: 0, isHeld: false, chanceAllGiven: null, openCents: 80_000, ...more });

test.each([
  ['nothing is wrong', {}, []],
  ['the chance is nine in ten', { chanceAllGiven: 0.9 }, []],
  ['the chance is a little less', { chanceAllGiven: 0.899 }, ['chance']],
  ['it is one read behind', { behind: 1 }, ['behind']],
  ['everything is given', { owed: 0, chanceAllGiven: 0 }, []],
  ['everything is given and a game was below its least', { owed: 0, brokenFloors: 1 }, ['floor']],
  ['it is on hold', { isHeld: true }, ['held']],
  ['it is on hold and nothing is owed any more', { isHeld: true, owed: 0 }, []],
  ['all of it comes together', { shortfall: 2, isHeld: true, brokenFloors: 1, behind: 3, chanceAllGiven: 0 }, ['shortfall', 'held', 'floor', 'behind', 'chance']],
] as const)('where %s, the risks are as told', (_, more, risks) => {
  expect(risksOf(promise(more as Partial<PromiseAtRisk>))).toEqual(risks);
});

test.each([
  [{ chanceAllGiven: 0.75 }, 20_000],
  [{ chanceAllGiven: 0 }, 80_000],
  [{ chanceAllGiven: 1 }, 0],
  [{ behind: 2 }, 20_000],
  [{ behind: 2, shortfall: 4 }, 40_000],
  [{ owed: 0, chanceAllGiven: 0 }, 0],
] as const)('with %j, of $800.00 not earned yet there is at stake %i cents', (more, cents) => {
  expect(atStakeCents(promise(more))).toBe(cents);
});

describe('the cheapest repair', () => {
  const concession = { readKindId: 'k', readKindName: 'Concession read', priceCents: 4_000, freePlaces: 2 };
  const gameBall = { readKindId: 'g', readKindName: 'Sponsored game ball', priceCents: 7_500, freePlaces: 5 };
  const options = (missed: number) => repairOptionsOf({ missed, priceCents: 4_000, kind: concession, others: [gameBall], creditCents: missed * 4_000, carriedCents: missed * 4_000, isInKind: false });
  test.each([
    ['more of the kind while places are free', { openShortfall: 2, shortfall: 2 }, 2, 'Give 2 more of Concession read', 0],
    // Three reads at 40.00 are 120.00: two game balls at 75.00 are 150.00, a credit 120.00, so carrying over comes first at the same price.
    ['carrying over once they are full', { openShortfall: 3, shortfall: 3 }, 3, 'Carry 3 reads over into the next contract', 12_000],
    ['lifting the hold before anything', { isHeld: true, openShortfall: 3, shortfall: 3 }, 3, 'Settle what the hold is about, and lift it', 0],
    ['waiting where a makegood is proposed', { openShortfall: 0, shortfall: 3 }, 0, 'A makegood is proposed: wait for the answer', null],
    ['placing what has no place', { behind: 1, planned: 7 }, 0, 'Place 1 read that has no place yet', 0],
    ['reads logged need no place', { behind: 1, planned: 7, loggedNotSignedOff: 1 }, 0, 'All have their place: move them to earlier games', 0],
    ['speaking with the sponsor where mentions wait for the floor', { counting: 'onOccurrence', planned: 0, chanceAllGiven: 0.2 }, 0, 'It waits for what happens on the floor: speak with the sponsor early', null],
  ] as const)('is %s', (_, more, missed, words, costCents) => {
    expect(cheapestRepair(promise(more as Partial<PromiseAtRisk>), options(missed))).toMatchObject({ words, costCents });
  });
});
