import { expect, test } from 'vitest';
import type { BillingPlan } from '../../server/domain/billing/billing-plan.ts';
import { dayOf, weekdayOf } from '../../server/domain/day.ts';
import { centsOf } from '../../server/domain/money.ts';
import { agreedPrice, priceOfNextYear } from '../../server/domain/sponsorship/rollover/agreed-price.ts';
import { fateOf, waitsForGames } from '../../server/domain/sponsorship/rollover/fate.ts';
import type { EndingContract } from '../../server/domain/sponsorship/rollover/fate.ts';
import { linesFollowed } from '../../server/domain/sponsorship/rollover/lines-followed.ts';

import { movedBillingPlan } from '../../server/domain/billing/moved-plan.ts';
import { movedDay, movedMoneyDay, nextSeasonDays, nextSeasonName } from '../../server/domain/sponsorship/rollover/moved-days.ts';

const line = (id: string, readKindId: string, place: number) => ({ id, readKindId, place });

test.each([
  ['the same kind at the same place', [line('a', 'ball', 1), line('b', 'snack', 2)], [line('A', 'ball', 1), line('B', 'snack', 2)], ['A', 'B']],
  ['two lines of one kind, each at its place', [line('a', 'ball', 1), line('b', 'ball', 2)], [line('A', 'ball', 1), line('B', 'ball', 2)], ['A', 'B']],
  ['the one line of its kind that moved', [line('a', 'ball', 1), line('b', 'snack', 2)], [line('B', 'snack', 1), line('A', 'ball', 2)], ['A', 'B']],
  ['a line that was left out', [line('a', 'ball', 1), line('b', 'snack', 2)], [line('A', 'ball', 1)], ['A', null]],
  ['two that moved, so nobody can say which', [line('a', 'ball', 1), line('b', 'ball', 2)], [line('X', 'snack', 1), line('Y', 'snack', 2), line('A', 'ball', 3), line('B', 'ball', 4)], [null, null]],
  ['another kind at its place', [line('a', 'ball', 1)], [line('X', 'snack', 1)], [null]],
])('a line of the next contract stands for one of the contract before: %s', (_, before, after, expected) => {
  expect(linesFollowed(before, after).map((one) => one.nextLineId)).toEqual(expected);
});

test.each([
  ['2026-11-20', '2027-11-19'],
  ['2027-11-19', '2028-11-17'],
  ['2028-02-28', '2029-02-26'],
  ['2028-02-29', '2029-02-27'],
  ['2028-03-01', '2029-02-28'],
])('the day %s of a season is proposed as %s of the next, the same day of the week', (day, next) => {
  const proposed = nextSeasonDays({ startsOn: dayOf(day), endsOn: dayOf(day) });
  expect([proposed.startsOn, weekdayOf(proposed.startsOn)]).toEqual([next, weekdayOf(dayOf(day))]);
});

test.each([
  ['Basketball 2026-27', 'Basketball 2027-28'],
  ['Boys basketball 2026–27', 'Boys basketball 2027–28'],
  ['Girls 1999-2000', 'Girls 2000-2001'],
  ['Volleyball 2098-99', 'Volleyball 2099-00'],
  ['Football 2026', 'Football 2027'],
  ['Football', 'Football, next season'],
])('a season called %s is followed by %s', (name, next) => {
  expect(nextSeasonName(name)).toBe(next);
});

const MOVE = { from: { startsOn: dayOf('2027-11-19'), endsOn: dayOf('2028-03-11') }, to: { startsOn: dayOf('2028-11-20'), endsOn: dayOf('2029-03-10') } };

test.each([
  ['the first day is the first day', '2027-11-19', '2028-11-20'],
  ['the last day is the last day', '2028-03-11', '2029-03-10'],
  ['a day between keeps its distance from the first', '2027-11-20', '2028-11-21'],
  ['over a leap day, too', '2028-02-29', '2029-03-02'],
  ['the last that stays within the season', '2028-03-08', '2029-03-10'],
  ['the first that would not', '2028-03-09', '2029-03-10'],
  ['a day before the season keeps its date, so that a year of July 1 begins with its fiscal year', '2027-07-01', '2028-07-01'],
  ['a day after the season keeps its date, so that it ends with it', '2028-06-30', '2029-06-30'],
  ['the day before the first would still be before it', '2027-11-18', '2028-11-18'],
  ['the day after the last is not before the last', '2028-03-12', '2029-03-12'],
])('in the next season %s', (_, day, moved) => {
  expect(movedDay(dayOf(day), MOVE)).toBe(moved);
});

test.each([
  ['2027-12-01', '2028-12-01'],
  ['2028-07-01', '2029-07-01'],
  ['2028-02-28', '2029-02-28'],
  ['2028-02-29', '2029-02-28'],
])('a bill of %s is a bill of %s a year later, so that it stays in its fiscal year', (day, moved) => {
  expect(movedMoneyDay(dayOf(day), MOVE)).toBe(moved);
});

test.each<[string, BillingPlan, unknown]>([
  ['in full', { kind: 'inFull', on: dayOf('2027-12-01') }, { kind: 'inFull', on: '2028-12-01' }],
  ['by the game', { kind: 'perGame' }, { kind: 'perGame' }],
  ['in shares', { kind: 'installments', installments: [{ on: dayOf('2027-12-01'), share: 2 }] }, { kind: 'installments', installments: [{ on: '2028-12-01', share: 2 }] }],
  ['in amounts that come to the price', { kind: 'installments', installments: [{ on: dayOf('2027-12-01'), share: 0, amountCents: centsOf(30_001) }, { on: dayOf('2028-01-01'), share: 0, amountCents: centsOf(40_000) }] },
    { kind: 'installments', installments: [{ on: '2028-12-01', share: 0, amountCents: 30_751 }, { on: '2029-01-01', share: 0, amountCents: 41_000 }] }],
  ['in amounts below the price', { kind: 'installments', installments: [{ on: dayOf('2027-12-01'), share: 0, amountCents: centsOf(10_000) }] },
    { kind: 'installments', installments: [{ on: '2028-12-01', share: 0, amountCents: 10_250 }] }],
  ['with a deposit', { kind: 'depositAndArrears', depositCents: centsOf(10_000), depositOn: dayOf('2027-12-01') }, { kind: 'depositAndArrears', depositCents: 10_250, depositOn: '2028-12-01' }],
])('a plan of bills moves along: %s', (_, plan, moved) => {
  expect(movedBillingPlan(plan, MOVE, { beforeCents: centsOf(70_001), nextCents: centsOf(71_751), increaseBasisPoints: 250 })).toEqual(moved);
});

test('the second and the third year cost what the year before does and its increase, to the cent', () => {
  const second = priceOfNextYear(centsOf(70_001), 250);
  expect([second, priceOfNextYear(second, 250), priceOfNextYear(centsOf(70_001), 0)]).toEqual([71_751, 73_545, 70_001]);
});

test('reads that were added or swapped raise the price of the next year, a concession does not lower it', () => {
  const added = { kind: 'amended' as const, changes: [{ lineId: 'a', reads: 2, priceCents: centsOf(8000) }] };
  const swapped = { kind: 'swapped' as const, fromLineId: 'a', fromReads: 1, toLineId: 'b', toReads: 1, priceCents: centsOf(-500) };
  expect(agreedPrice(centsOf(70_000), [added, swapped, { kind: 'priceLowered', byCents: centsOf(9000) }])).toBe(77_500);
});

const signed: EndingContract = { state: 'signed', yearNumber: 1, years: 1, isFollowed: false, isInKind: false, isHeld: false, openDisputes: 0, waitsForGames: false, teamsOfOtherSeasons: 0 };

test.each<[string, Partial<EndingContract>, string, string, string[]]>([
  ['the last year but one', { yearNumber: 2, years: 3 }, 'carryOn', 'yearsLeft', []],
  ['the last year', { yearNumber: 3, years: 3 }, 'renew', 'lastYear', []],
  ['a single year', {}, 'renew', 'lastYear', []],
  ['a closed one with years left', { state: 'closed', years: 2 }, 'carryOn', 'yearsLeft', []],
  ['one that ended early with years left', { state: 'ended', years: 2 }, 'leave', 'endedEarly', []],
  ['a draft', { state: 'draft', years: 2 }, 'leave', 'neverSigned', []],
  ['one that is followed', { years: 2, isFollowed: true }, 'leave', 'followedAlready', []],
  ['one on hold', { years: 2, isHeld: true }, 'carryOn', 'yearsLeft', ['onHold']],
  ['one in goods', { years: 2, isInKind: true }, 'carryOn', 'yearsLeft', ['inKind']],
  ['one in goods without years left', { isInKind: true }, 'renew', 'lastYear', []],
  ['one in dispute', { years: 2, openDisputes: 1 }, 'carryOn', 'yearsLeft', []],
  ['one shared over games', { years: 2, waitsForGames: true }, 'carryOn', 'yearsLeft', ['countedByGame']],
  ['one over another sport', { years: 2, teamsOfOtherSeasons: 1 }, 'carryOn', 'yearsLeft', ['otherSeasons']],
])('what becomes of a contract: %s', (_, contract, proposed, because, waitsFor) => {
  const fate = fateOf({ ...signed, ...contract });
  expect([fate.choices[0], fate.because, fate.waitsFor]).toEqual([proposed, because, waitsFor]);
});

test.each([
  ['fixed' as const, 'perTerm', null, false],
  ['fixed' as const, 'perGame', null, true],
  ['fixed' as const, 'perNight', null, true],
  ['fixed' as const, 'onOccurrence', null, true],
  ['fixed' as const, 'onOccurrence', 0, true],
  ['fixed' as const, 'onOccurrence', 1, false],
  ['perRead' as const, 'perGame', null, false],
])('a price that is %s over reads %s (at least %s) waits for games: %s', (pricing, counting, readsAtLeast, waits) => {
  expect(waitsForGames(pricing, [{ counting, readsAtLeast }])).toBe(waits);
});
