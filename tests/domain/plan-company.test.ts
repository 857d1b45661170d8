import { expect, test } from 'vitest';
import { checkPlan } from '../../server/domain/planning/check-plan.ts';
import type { PlanSeason, PlanWishes, SeasonPlan } from '../../server/domain/planning/season.ts';
import { solveSeason } from '../../server/planning/solver/season-solving.ts';
import { aGame, aPlaced, aPlanSeason, aPromise, aWindow } from '../support/small-plan-season.ts';
import { wholeBound } from '../../server/domain/planning/company/whole-bound.ts';

const solve = (season: PlanSeason, keeps: PlanWishes['keeps'] = 'nothing'): Promise<SeasonPlan> => solveSeason({ id: 1, season, wishes: { keeps }, company: true, seconds: 10 }, () => {});
const window = (reads: number) => aWindow('timeOut1', { places: reads });

test('two sponsors of one category are not read in one window, though it has places for both', async () => {
  const rivals = [aPromise('Creamery', 1, ['g1'], { categoryId: 'food' }), aPromise('Pizzeria', 1, ['g1'], { categoryId: 'food' })];
  expect(await solve(aPlanSeason([aGame(1, [window(2)])], rivals))).toMatchObject({ shortfallReads: 1, weightedShortfall: 3, bound: 3, isProven: true, by: 'company' });
  const apart = rivals.map((promise) => ({ ...promise, categoryId: promise.sponsorId }));
  expect(await solve(aPlanSeason([aGame(1, [window(2)])], apart))).toMatchObject({ shortfallReads: 0, bound: 0, isProven: true });
});

test.each([
  ['none', 1, 2], ['window', 2, 2], ['window', 1, 1], ['next', 3, 2], ['next', 2, 1], ['game', 5, 1],
] as const)('with separation %s and %i windows in a row, %i of two competitors are read', async (separation, windows, read) => {
  const game = aGame(1, Array.from({ length: windows }, (_, at) => aWindow(`timeOut${at + 1}`)));
  const rivals = [aPromise('Creamery', 1, ['g1'], { categoryId: 'food', separation }), aPromise('Pizzeria', 1, ['g1'], { categoryId: 'food', separation: 'none' })];
  const plan = await solve(aPlanSeason([game], rivals));
  expect(plan).toMatchObject({ shortfallReads: 2 - read, isProven: true });
  expect(plan.reads).toHaveLength(read);
});

test.each([[45, 2], [54, 2], [55, 3]])('of a read of 25 seconds and two of 15, a window of %i seconds holds %i', async (seconds, read) => {
  const promises = [aPromise('Long', 1, ['g1'], { seconds: 25 }), aPromise('Short', 1, ['g1']), aPromise('Brief', 1, ['g1'])];
  expect(await solve(aPlanSeason([aGame(1, [aWindow('timeOut1', { places: 3, seconds })])], promises))).toMatchObject({ shortfallReads: 3 - read, isProven: true });
});

test('the read that matters more is given, not the two that fit', async () => {
  const promises = [aPromise('Long', 1, ['g1'], { seconds: 25, priority: 1 }), aPromise('Short', 1, ['g1'], { priority: 3, seconds: 20 }), aPromise('Brief', 1, ['g1'], { priority: 3, seconds: 20 })];
  const plan = await solve(aPlanSeason([aGame(1, [aWindow('timeOut1', { places: 3, seconds: 40 })])], promises));
  expect(plan.reads.map((read) => read.promiseId)).toEqual(['Long']);
  expect(plan).toMatchObject({ weightedShortfall: 2, bound: 2, isProven: true });
});

test('a kind is held by so many different sponsors of a game, each with as many reads as it likes', async () => {
  const game = aGame(1, [aWindow('timeOut1'), aWindow('timeOut2')]);
  const promises = [aPromise('Creamery', 3, ['g1'], { sponsorsPerGame: 1 }), aPromise('Hardware', 1, ['g1'], { sponsorsPerGame: 1 })];
  const plan = await solve(aPlanSeason([game], promises));
  expect(plan.reads.map((read) => read.promiseId)).toEqual(['Creamery', 'Creamery', 'Creamery']);
  expect(plan).toMatchObject({ weightedShortfall: 3, bound: 3, isProven: true });
});

test('a plan that is kept moves the fewest reads, and none that stays', async () => {
  const games = [1, 2, 3].map((number) => aGame(number, [aWindow('timeOut1'), aWindow('timeOut2')]));
  const ids = games.map((game) => game.gameId);
  const promises = [aPromise('Creamery', 3, ids, { categoryId: 'food', mostPerGame: 1 }), aPromise('Pizzeria', 2, ids, { categoryId: 'food', mostPerGame: 1 })];
  const placed = [
    aPlaced('Creamery', 'g1', 'timeOut1', 1, true), aPlaced('Creamery', 'g2', 'timeOut1'), aPlaced('Creamery', 'g3', 'timeOut1'),
    aPlaced('Pizzeria', 'g1', 'timeOut1', 2), aPlaced('Pizzeria', 'g2', 'timeOut2'),
  ];
  const plan = await solve(aPlanSeason(games, promises, placed), 'whatIsPlaced');
  expect(plan).toMatchObject({ shortfallReads: 0, movedReads: 0, movedWithinGame: 1 });
  expect(plan.reads).toContainEqual({ promiseId: 'Creamery', gameId: 'g1', windowKey: 'timeOut1', place: 1 });
  expect(plan.reads).toContainEqual({ promiseId: 'Pizzeria', gameId: 'g1', windowKey: 'timeOut2', place: 1 });
  expect(plan.reads).toContainEqual({ promiseId: 'Pizzeria', gameId: 'g2', windowKey: 'timeOut2', place: 1 });
});

test('competitors that stay side by side stay, and nothing is added beside them', async () => {
  const game = aGame(1, [aWindow('timeOut1', { places: 4 })]);
  const promises = ['Creamery', 'Pizzeria', 'Bakery'].map((name) => aPromise(name, 2, ['g1'], { categoryId: 'food' }));
  const season = aPlanSeason([game], promises, [aPlaced('Creamery', 'g1', 'timeOut1', 1, true), aPlaced('Pizzeria', 'g1', 'timeOut1', 2, true)]);
  const plan = await solve(season);
  expect(plan.reads).toHaveLength(2);
  expect(checkPlan(season, plan.reads).filter((fault) => fault.severity === 'wall')).toEqual([]);
});

test.each([[12, 12], [12.0009, 12], [12.002, 13], [11.9999, 12], [0.4, 1], [0, 0]])('a bound of %s is proven as %s', (bound, whole) => {
  expect(wholeBound(bound)).toBe(whole);
});
