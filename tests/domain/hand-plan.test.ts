import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayOf } from '../../server/domain/day.ts';
import { evenPace, firstSpread } from '../support/hand-plan.ts';
import type { SpreadCommitment, SpreadGame, SpreadPlacement } from '../support/hand-plan.ts';

const home = (place: number, extra: Partial<SpreadGame> = {}): SpreadGame => ({
  gameId: `game-${String(place).padStart(2, '0')}`, nightId: `night-${place}`, playedOn: dayOf(`2026-12-${String(place).padStart(2, '0')}`),
  teamIds: ['varsity-girls'], level: 'varsity', isAnnounced: true, isHome: true, places: { pregame: 1, timeout: 4, halftime: 2 }, ...extra,
});
const season = (games: number, extra: Partial<SpreadGame> = {}): SpreadGame[] => Array.from({ length: games }, (_, place) => home(place + 1, extra));
const promise = (id: string, readsOwed: number, extra: Partial<SpreadCommitment> = {}): SpreadCommitment => ({
  commitmentId: id, sponsorId: `sponsor-${id}`, readKindId: 'kind-timeout', counting: 'perTerm', readsOwed, startsOn: dayOf('2026-12-01'), endsOn: dayOf('2027-02-28'),
  teamIds: [], levels: [], leastPerGame: null, mostPerGame: null, windows: ['timeout'], sponsorsPerGame: 99, priority: 2, ...extra,
});
const perGame = (placements: readonly SpreadPlacement[], games: readonly SpreadGame[], id = 'a'): number[] =>
  games.map((game) => placements.filter((placement) => placement.gameId === game.gameId && placement.commitmentId === id).length);
const spread = (commitments: SpreadCommitment[], games: SpreadGame[], alreadyPlaced: SpreadPlacement[] = []): ReturnType<typeof firstSpread> => firstSpread({ commitments, games, alreadyPlaced });

test.each([
  [10, 5, [2, 2, 2, 2, 2]],
  [7, 5, [1, 2, 1, 2, 1]],
  [3, 5, [1, 0, 1, 0, 1]],
  [1, 5, [0, 0, 1, 0, 0]],
  [0, 3, [0, 0, 0]],
  [4, 1, [4]],
  [4, 0, []],
])('%i reads over %i games fall %j', (reads, games, wanted) => {
  expect(evenPace(reads, games)).toEqual(wanted);
});

test('after every game the pace is within half a read of an even one', () => {
  fc.assert(fc.property(fc.nat(200), fc.integer({ min: 1, max: 60 }), (reads, games) => {
    const pace = evenPace(reads, games);
    let given = 0;
    pace.forEach((here, place) => {
      given += here;
      expect(here).toBeGreaterThanOrEqual(0);
      expect(Math.abs(given - (reads * (place + 1)) / games)).toBeLessThanOrEqual(0.5);
    });
    expect(given).toBe(reads);
  }));
});

describe('where a promise is placed', () => {
  test.each<[string, Partial<SpreadCommitment>, number[]]>([
    ['ten reads over five games are two a game', {}, [2, 2, 2, 2, 2]],
    ['at least one a game comes before the rest', { readsOwed: 6, leastPerGame: 1 }, [1, 1, 2, 1, 1]],
    ['a floor that cannot be held everywhere is spread', { readsOwed: 3, leastPerGame: 1 }, [1, 0, 1, 0, 1]],
    ['at most one a game leaves the rest unplaced', { mostPerGame: 1 }, [1, 1, 1, 1, 1]],
    ['four places hold four reads', { readsOwed: 20 }, [4, 4, 4, 4, 4]],
    ['four places do not hold a fifth', { readsOwed: 21 }, [4, 4, 4, 4, 4]],
    ['reads per game are so many at each game', { counting: 'perGame', readsOwed: 3 }, [3, 3, 3, 3, 3]],
    ['reads on occurrence are never planned', { counting: 'onOccurrence' }, [0, 0, 0, 0, 0]],
    ['only days of the term count', { readsOwed: 3, startsOn: dayOf('2026-12-02'), endsOn: dayOf('2026-12-04') }, [0, 1, 1, 1, 0]],
    ['a team that does not play here is read nowhere', { teamIds: ['wrestling'] }, [0, 0, 0, 0, 0]],
    ['a level that does not play here is read nowhere', { levels: ['freshman'] }, [0, 0, 0, 0, 0]],
    ['a window that is not there holds nothing', { windows: ['postgame'] }, [0, 0, 0, 0, 0]],
    ['a full window sends the rest to the next one', { readsOwed: 25, windows: ['timeout', 'halftime'] }, [5, 5, 5, 5, 5]],
  ])('%s', (_, extra, wanted) => {
    const games = season(5);
    expect(perGame(spread([promise('a', 10, extra)], games).placements, games)).toEqual(wanted);
  });

  test('an away game and a game nobody announces are left out', () => {
    const games = [home(1), home(2, { isHome: false }), home(3, { isAnnounced: false }), home(4)];
    expect(perGame(spread([promise('a', 4)], games).placements, games)).toEqual([2, 0, 0, 2]);
  });

  test('a read per night is placed once on a night of two games, at its last', () => {
    const games = [home(1), home(2, { nightId: 'double' }), home(3, { nightId: 'double' })];
    expect(perGame(spread([promise('a', 1, { counting: 'perNight' })], games).placements, games)).toEqual([1, 0, 1]);
  });

  test('reads already placed stay and the rest is spread around them', () => {
    const games = season(5);
    const alreadyPlaced = [{ commitmentId: 'a', gameId: 'game-01', window: 'timeout', place: 1 }, { commitmentId: 'a', gameId: 'game-01', window: 'timeout', place: 2 }, { commitmentId: 'a', gameId: 'game-01', window: 'timeout', place: 3 }];
    const { placements } = spread([promise('a', 5)], games, alreadyPlaced);
    expect(perGame(placements, games)).toEqual([0, 0, 0, 1, 1]);
  });

  test('a place taken by another is passed over', () => {
    const games = season(1);
    const { placements } = spread([promise('a', 1)], games, [{ commitmentId: 'b', gameId: 'game-01', window: 'timeout', place: 1 }]);
    expect(placements).toEqual([{ commitmentId: 'a', gameId: 'game-01', window: 'timeout', place: 2 }]);
  });

  test('a game that is full sends its read to the next', () => {
    const games = [home(1, { places: {} }), home(2), home(3)];
    expect(perGame(spread([promise('a', 3)], games).placements, games)).toEqual([0, 2, 1]);
  });

  test('reads for which no game is left are told as unplaced', () => {
    expect(spread([promise('a', 3)], [])).toEqual({ placements: [], unplaced: [{ commitmentId: 'a', reads: 3 }] });
  });

  test('a kind that one sponsor may hold is not shared in a game', () => {
    const games = season(2);
    const { placements, unplaced } = spread([promise('a', 2, { sponsorsPerGame: 1, priority: 1 }), promise('b', 2, { sponsorsPerGame: 1 })], games);
    expect([perGame(placements, games, 'a'), perGame(placements, games, 'b')]).toEqual([[1, 1], [0, 0]]);
    expect(unplaced).toEqual([{ commitmentId: 'b', reads: 2 }]);
  });

  test('the first priority takes the last place', () => {
    const games = season(1, { places: { timeout: 1 } });
    expect(spread([promise('a', 1), promise('b', 1, { priority: 1 })], games)).toEqual({
      placements: [{ commitmentId: 'b', gameId: 'game-01', window: 'timeout', place: 1 }], unplaced: [{ commitmentId: 'a', reads: 1 }],
    });
  });
});

test('no place is used twice, no window is overfull, nothing is lost, and the same season spreads the same', () => {
  const commitments = fc.array(fc.record({ readsOwed: fc.nat(30), mostPerGame: fc.option(fc.integer({ min: 1, max: 4 })), leastPerGame: fc.option(fc.nat(2)), priority: fc.integer({ min: 1, max: 3 }) }), { maxLength: 6 });
  const games = fc.array(fc.record({ pregame: fc.nat(2), timeout: fc.nat(4) }), { maxLength: 12 });
  fc.assert(fc.property(commitments, games, (owed, places) => {
    const promises = owed.map((one, place) => promise(`p${place}`, one.readsOwed, { ...one, windows: ['timeout', 'pregame'] }));
    const played = places.map((here, place) => home(place + 1, { places: here }));
    const result = spread(promises, played);
    const taken = result.placements.map((placement) => `${placement.gameId} ${placement.window} ${placement.place}`);
    expect(new Set(taken).size).toBe(taken.length);
    for (const placement of result.placements) expect(placement.place).toBeLessThanOrEqual(played.find((game) => game.gameId === placement.gameId)?.places[placement.window] ?? 0);
    for (const one of promises) {
      const counts = perGame(result.placements, played, one.commitmentId);
      expect(Math.max(0, ...counts)).toBeLessThanOrEqual(one.mostPerGame ?? Infinity);
      const rest = result.unplaced.find((line) => line.commitmentId === one.commitmentId)?.reads ?? 0;
      expect(counts.reduce((sum, count) => sum + count, 0) + rest).toBe(one.readsOwed);
    }
    expect(spread([...promises].reverse(), played)).toEqual(result);
  }));
});
