import { expect, test } from 'vitest';
import type { Day } from '../../server/domain/day.ts';
import type { PlanWindow } from '../../server/domain/planning/season.ts';
import { inventoryOf } from '../../server/domain/reports/inventory.ts';

// Counted by hand. Source: common practice, no source.
const halftime = (places: number, groupPlaces: Record<string, number> = {}): PlanWindow => ({ key: 'halftime', kind: 'halftime', places, groupPlaces, seconds: null });
const pregame = (places: number): PlanWindow => ({ key: 'pregame', kind: 'pregame', places, groupPlaces: {}, seconds: null });
const game = (gameId: string, playedOn: string, isOver: boolean) => ({ gameId, playedOn: playedOn as Day, isOver, windows: [pregame(1), halftime(3, { long: 2 })] });
const read = (gameId: string, windowKey: string, readKindId: string, what: 'given' | 'sold' | 'held', reads: number) => ({ gameId, windowKey, readKindId, what, reads });

const games = [game('a', '2026-12-04', true), game('b', '2026-12-11', false), game('c', '2027-01-08', false)];
const reads = [read('a', 'halftime', 'concession', 'given', 2), read('b', 'halftime', 'concession', 'sold', 1), read('b', 'halftime', 'ball', 'held', 1), read('b', 'pregame', 'ball', 'sold', 1)];
const kinds = [{ readKindId: 'ball', placeGroup: null, windows: ['pregame'] }, { readKindId: 'concession', placeGroup: 'long', windows: ['halftime'] }];

test('each place is counted once: given or unused where it is over, sold, held or left where it is to come', () => {
  const all = inventoryOf(games, reads, kinds).filter(({ readKindId }) => readKindId === null);
  expect(all).toEqual([
    { month: '2026-12', readKindId: null, games: 2, places: 8, given: 2, sold: 2, held: 1, left: 1, unused: 2 },
    { month: '2027-01', readKindId: null, games: 1, places: 4, given: 0, sold: 0, held: 0, left: 4, unused: 0 },
  ]);
  for (const { places, given, sold, held, left, unused } of all) expect(given + sold + held + left + unused).toBe(places);
});

test('a kind has the places of its own windows, no more than its group may, and shares them with others', () => {
  const of = (kind: string) => inventoryOf(games, reads, kinds).find(({ readKindId, month }) => readKindId === kind && month === '2026-12');
  expect(of('ball')).toMatchObject({ places: 2, given: 0, sold: 1, held: 0, left: 0, unused: 1 });
  // Two of three places for long reads: both given in the first game; in the second one is sold and one is held for another kind.
  expect(of('concession')).toMatchObject({ places: 4, given: 2, sold: 1, held: 0, left: 0, unused: 0 });
});

test('more reads than places leave none, not fewer than none', () => {
  const [all] = inventoryOf([games[0]!], [read('a', 'pregame', 'ball', 'given', 3)], []);
  expect(all).toMatchObject({ places: 4, given: 3, unused: 3 });
});

test('a season without games has no months', () => {
  expect(inventoryOf([], reads, kinds)).toEqual([]);
});
