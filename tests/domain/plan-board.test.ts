import { describe, expect, test } from 'vitest';
import { dayOf } from '../../server/domain/day.ts';
import { brokenBy, changeBehind, changePlan, seasonAround } from '../../server/domain/planning/board/change.ts';
import type { BoardChange } from '../../server/domain/planning/board/change.ts';
import { totalOfAll, totalsOf } from '../../server/domain/planning/board/totals.ts';
import type { PlacedRead, PlanGame, PlanPromise, PlanSeason } from '../../server/domain/planning/season.ts';

const game = (gameId: string, isLocked = false): PlanGame => ({
  gameId, nightId: gameId, label: `${gameId} at Kestrels`, playedOn: dayOf('2026-12-04'), teamIds: [], isLocked,
  windows: [{ key: 'timeOut', kind: 'timeOut', places: 1, groupPlaces: {}, seconds: 60 }, { key: 'halftime', kind: 'halftime', places: 2, groupPlaces: {}, seconds: null }],
});
const promise = (promiseId: string, reads: number, change: Partial<PlanPromise> = {}): PlanPromise => ({
  promiseId, source: 'commitment', dealId: promiseId, sponsorId: promiseId, sponsorName: promiseId, categoryId: 'food', readKindId: 'concession', readKindName: 'Concession read', placeGroup: null,
  sponsorsPerGame: 9, seconds: 20, slots: [{ reads, gameIds: ['Herons', 'Miners', 'Otters'] }], windows: ['halftime', 'timeOut'], leastPerGame: 0, mostPerGame: null, pinnedGameIds: [], priority: 2, separation: 'window', ...change,
});
const placed = (placementId: string, promiseId: string, gameId: string, windowKey: string, place = 1, isFixed = false): PlacedRead => ({ placementId, promiseId, gameId, windowKey, place, isFixed });

/** Creamery on two games, Kitchen on one; the Otters' night is locked. */
const season: PlanSeason = {
  games: [game('Herons'), game('Miners'), game('Otters', true)],
  promises: [promise('Creamery', 4), promise('Kitchen', 1)],
  placed: [placed('a', 'Creamery', 'Herons', 'timeOut'), placed('b', 'Creamery', 'Miners', 'halftime', 1, true), placed('c', 'Kitchen', 'Herons', 'halftime', 2), placed('d', 'Creamery', 'Otters', 'halftime', 1, true)],
};
const move = (placementId: string, gameId: string, windowKey: string, place?: number): BoardChange => ({ kind: 'move', placementId, gameId, windowKey, place });
const add = (promiseId: string, gameId: string, windowKey: string): BoardChange => ({ kind: 'add', promiseId, gameId, windowKey });

describe('a person moves reads on the board', () => {
  test.each<[string, BoardChange[], (string | undefined)[]]>([
    ['a read may go to a free window', [move('a', 'Miners', 'timeOut')], []],
    ['a pinned read may be moved by a person', [move('b', 'Miners', 'timeOut')], []],
    ['two reads may change places in one unit', [move('a', 'Miners', 'halftime', 1), move('b', 'Herons', 'timeOut', 1)], []],
    ['a full window is a wall', [move('c', 'Herons', 'timeOut')], ['window-full', 'competitors-in-window']],
    ['a named place that is taken is a wall', [move('a', 'Herons', 'halftime', 2)], ['place-taken-twice', 'competitors-in-window']],
    ['a competitor in the window is a wall', [move('a', 'Herons', 'halftime')], ['competitors-in-window']],
    ['nothing is moved into a locked night', [move('a', 'Otters', 'timeOut')], ['locked-night-touched']],
    ['nothing is moved out of a locked night', [move('d', 'Miners', 'timeOut')], ['locked-night-touched']],
    ['nothing is moved within a locked night', [move('d', 'Otters', 'timeOut')], ['locked-night-touched', 'locked-night-touched']],
    ['nothing is taken out of a locked night', [{ kind: 'remove', placementId: 'd' }], ['locked-night-touched']],
    ['the last read that is owed may be added', [add('Creamery', 'Miners', 'timeOut')], []],
    ['one more than is owed may not', [add('Creamery', 'Miners', 'timeOut'), add('Creamery', 'Miners', 'halftime')], ['more-than-slot']],
    ['a read taken out leaves no fault', [{ kind: 'remove', placementId: 'a' }], []],
  ])('%s', (_, changes, codes) => {
    expect(brokenBy(season, changes).map((fault) => fault.code).sort()).toEqual(codes.toSorted());
  });

  test('what was broken before is not held against a change that does not make it worse', () => {
    const crowded: PlanSeason = { ...season, placed: [...season.placed, placed('e', 'Kitchen', 'Herons', 'timeOut', 2, true)] };
    expect(brokenBy(crowded, [move('c', 'Miners', 'timeOut')])).toEqual([]);
    expect(brokenBy(crowded, [{ kind: 'remove', placementId: 'a' }])).toEqual([]);
  });

  test('without a place the first free one is taken, also of a place another change leaves', () => {
    const { spots } = changePlan(season, [move('a', 'Herons', 'halftime'), move('c', 'Herons', 'timeOut')]);
    expect(spots).toMatchObject([{ windowKey: 'halftime', place: 1 }, { windowKey: 'timeOut', place: 1 }]);
  });

  test('asking about two games alone finds the same walls as asking about the season', () => {
    for (const read of season.placed) {
      for (const { gameId, windows } of season.games) {
        for (const { key } of windows) {
          const change = move(read.placementId!, gameId, key);
          const near = seasonAround(season, [read.gameId, gameId], [read.promiseId]);
          expect(brokenBy(near, [change])).toEqual(brokenBy(season, [change]));
        }
      }
    }
  });

  test('a fault is laid to the change that stands where it is', () => {
    const changes = [move('a', 'Miners', 'timeOut'), move('c', 'Otters', 'timeOut')];
    const [fault] = brokenBy(season, changes);
    expect(changeBehind(fault!, changePlan(season, changes).spots)).toBe(1);
  });
});

test('what is owed, planned and at risk adds up by sponsor and in all', () => {
  const totals = totalsOf(season);
  expect(totals).toEqual([
    { sponsorId: 'Creamery', sponsorName: 'Creamery', owed: 4, planned: 3, atRisk: 1 },
    { sponsorId: 'Kitchen', sponsorName: 'Kitchen', owed: 1, planned: 1, atRisk: 0 },
  ]);
  expect(totalOfAll(totals)).toEqual({ owed: 5, planned: 4, atRisk: 1 });
});
