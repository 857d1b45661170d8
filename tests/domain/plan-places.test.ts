import { describe, expect, test } from 'vitest';
import { addDays, dayOf } from '../../server/domain/day.ts';
import { checkPlan } from '../../server/domain/planning/check-plan.ts';
import { planPlaces } from '../../server/domain/planning/places/plan-places.ts';
import type { PlacedRead, PlanGame, PlanPromise, PlanSeason, PlanWindow, SeasonPlan } from '../../server/domain/planning/season.ts';
import { chance, randomPlanSeason } from '../support/random-plan-season.ts';

const window = (key: string, kind: PlanWindow['kind'], places: number, groupPlaces: Record<string, number> = {}): PlanWindow => ({ key, kind, places, groupPlaces, seconds: null });
const usual = [window('pregame', 'pregame', 1), window('timeOut1', 'timeOut', 2), window('timeOut2', 'timeOut', 2), window('halftime', 'halftime', 3)];
const game = (at: number, extra: Partial<PlanGame> = {}): PlanGame => ({
  gameId: `game-${at}`, nightId: `night-${at}`, label: 'Herons at Kestrels', playedOn: addDays(dayOf('2026-12-04'), at * 7), teamIds: ['varsity-girls'], windows: usual, isLocked: false, ...extra,
});
const games = (count: number, extra: Partial<PlanGame> = {}): PlanGame[] => Array.from({ length: count }, (_, at) => game(at + 1, extra));
const promise = (id: string, extra: Partial<PlanPromise> = {}): PlanPromise => ({
  promiseId: id, source: 'commitment', dealId: `deal-${id}`, sponsorId: `sponsor-${id}`, sponsorName: 'Snowmelt Creamery', categoryId: `category-${id}`, readKindId: 'kind-time-out', readKindName: 'Time-out read',
  placeGroup: null, sponsorsPerGame: 99, seconds: 15, slots: [], windows: ['timeOut'], leastPerGame: 0, mostPerGame: null, pinnedGameIds: [], priority: 2, separation: 'window', ...extra,
});
const over = (reads: number, season: readonly PlanGame[]): Pick<PlanPromise, 'slots'> => ({ slots: [{ reads, gameIds: season.map((one) => one.gameId) }] });
const placed = (promiseId: string, gameId: string, windowKey: string, place: number, isFixed = false): PlacedRead => ({ promiseId, gameId, windowKey, place, placementId: `placement-${gameId}-${windowKey}-${place}`, isFixed });
const plan = (season: readonly PlanGame[], promises: readonly PlanPromise[], there: readonly PlacedRead[] = [], keeps: 'nothing' | 'whatIsPlaced' = 'nothing'): SeasonPlan => {
  const all: PlanSeason = { games: season, promises, placed: there };
  const found = planPlaces(all, { keeps });
  expect(checkPlan(all, found.reads).filter((fault) => fault.severity === 'wall')).toEqual([]);
  return found;
};
const perGame = (found: SeasonPlan, season: readonly PlanGame[], id = 'a'): number[] => season.map(({ gameId }) => found.reads.filter((read) => read.promiseId === id && read.gameId === gameId).length);

describe('where reads are placed', () => {
  test.each<[string, number, Partial<PlanPromise>, number[]]>([
    ['ten reads over five games are two a game', 10, {}, [2, 2, 2, 2, 2]],
    ['one read stands in the middle', 1, {}, [0, 0, 1, 0, 0]],
    ['at most one a game leaves the rest without a place', 10, { mostPerGame: 1 }, [1, 1, 1, 1, 1]],
    ['four places hold four reads', 20, {}, [4, 4, 4, 4, 4]],
    ['four places do not hold a fifth', 21, {}, [4, 4, 4, 4, 4]],
    ['a game promised aloud has its read before the pace counts', 1, { pinnedGameIds: ['game-5'] }, [0, 0, 0, 0, 1]],
    ['a least above the most is no floor', 5, { leastPerGame: 3, mostPerGame: 1 }, [1, 1, 1, 1, 1]],
    ['a full window sends the rest to the next one', 25, { windows: ['timeOut', 'pregame'] }, [5, 5, 5, 5, 5]],
  ])('%s', (_, reads, extra, wanted) => {
    const season = games(5);
    expect(perGame(plan(season, [promise('a', { ...over(reads, season), ...extra })]), season)).toEqual(wanted);
  });

  test('reads of one kind are shared out over its windows, and stand in the windows their kind prefers', () => {
    const [only] = [game(1)];
    const found = plan([only], [promise('a', over(2, [only])), promise('b', { ...over(4, [only]), windows: ['halftime', 'pregame'], readKindId: 'kind-halftime' })]);
    expect(found.reads.map(({ promiseId, windowKey, place }) => `${promiseId} ${windowKey} ${place}`).sort()).toEqual(
      ['a timeOut1 1', 'a timeOut2 1', 'b halftime 1', 'b halftime 2', 'b halftime 3', 'b pregame 1']);
  });

  test('a read that was promised more firmly takes the last place', () => {
    const season = [game(1, { windows: [window('pregame', 'pregame', 1)] })];
    const found = plan(season, [promise('a', { ...over(1, season), windows: ['pregame'], priority: 3 }), promise('b', { ...over(1, season), windows: ['pregame'], priority: 1 })]);
    expect([perGame(found, season, 'a'), perGame(found, season, 'b'), found.weightedShortfall]).toEqual([[0], [1], 1]);
  });

  test('each game and each night counted by itself keeps its own reads, on a doubleheader and in two venues at once', () => {
    const season = [game(1), game(2, { nightId: 'night-1' }), game(3), game(4, { playedOn: game(3).playedOn })];
    const byGame = promise('a', { slots: season.map(({ gameId }) => ({ reads: 2, gameIds: [gameId] })) });
    const byNight = promise('b', { slots: [{ reads: 2, gameIds: ['game-1', 'game-2'] }, { reads: 1, gameIds: ['game-3'] }, { reads: 1, gameIds: ['game-4'] }] });
    const found = plan(season, [byGame, byNight]);
    expect([perGame(found, season, 'a'), perGame(found, season, 'b'), found.shortfallReads]).toEqual([[2, 2, 2, 2], [1, 1, 1, 1], 0]);
  });

  test('nothing is placed on a locked night, and what is there stays', () => {
    const season = [game(1, { isLocked: true }), game(2)];
    const found = plan(season, [promise('a', over(6, season))], [placed('a', 'game-1', 'timeOut2', 2)]);
    expect([perGame(found, season), found.shortfallReads]).toEqual([[1, 4], 1]);
  });

  test('places are numbered without gaps around those that stay, and reads of promises nobody names take theirs', () => {
    const season = [game(1, { windows: [window('halftime', 'halftime', 4)] })];
    const found = plan(season, [promise('a', { ...over(3, season), windows: ['halftime'] })], [placed('a', 'game-1', 'halftime', 2, true), placed('nobody', 'game-1', 'halftime', 3)]);
    expect(found.reads.map((read) => read.place).sort()).toEqual([1, 2, 4]);
  });

  test('the same season gives the same plan in whatever order it is listed', () => {
    for (let seed = 1; seed <= 20; seed += 1) {
      const season = randomPlanSeason(seed);
      const draw = chance(seed + 1000);
      const mixed = <Item>(items: readonly Item[]): Item[] => items.map((item) => ({ item, at: draw() })).sort((one, other) => one.at - other.at).map(({ item }) => item);
      const other = planPlaces({ games: season.games, promises: mixed(season.promises), placed: mixed(season.placed) }, { keeps: 'nothing' });
      expect(other).toEqual(planPlaces(season, { keeps: 'nothing' }));
    }
  });
});

describe('why reads find no place', () => {
  const season = games(3);
  test.each<[string, readonly PlanGame[], readonly PlanPromise[], readonly PlacedRead[], object[]]>([
    ['no home game is left', [], [promise('a', over(4, season))], [], [{ because: 'noGames', needed: 4, places: 0, gameIds: [], windowKinds: [] }]],
    ['no window is ours', games(3, { windows: [window('timeOut1', 'timeOut', 0)] }), [promise('a', over(4, season))], [], [{ because: 'noGames', needed: 4, places: 0 }]],
    ['all its days are blacked out', season, [promise('a', { slots: [{ reads: 4, gameIds: [] }] })], [], [{ because: 'noGames', needed: 4, places: 0 }]],
    ['ten thousand reads were promised', season, [promise('a', over(10_000, season))], [], [{ because: 'places', needed: 10_000, places: 12, windowKinds: ['timeOut'], gameIds: ['game-1', 'game-2', 'game-3'] }]],
    ['its own most per game is too little', season, [promise('a', { ...over(4, season), mostPerGame: 1 })], [], [{ because: 'mostPerGame', needed: 4, places: 3, gameIds: ['game-1', 'game-2', 'game-3'] }]],
    ['a kind holds one sponsor', season, [promise('a', { ...over(2, season), sponsorsPerGame: 1 }), promise('b', { ...over(2, season), sponsorsPerGame: 1 })], [],
      [{ because: 'sponsorsPerGame', needed: 4, places: 3, promiseIds: ['a', 'b'] }]],
    ['reads that stay have filled the window', [game(1)], [promise('a', { ...over(2, [game(1)]), windows: ['pregame'] })], [placed('nobody', 'game-1', 'pregame', 1)],
      [{ because: 'places', needed: 2, places: 0, gameIds: ['game-1'], windowKinds: ['pregame'] }]],
    ['two groups of promises are short apart from each other', season, [promise('a', over(13, season)), promise('b', { ...over(4, season), windows: ['pregame'] })], [],
      [{ because: 'places', promiseIds: ['a'], needed: 13, places: 12, windowKinds: ['timeOut'] }, { because: 'places', promiseIds: ['b'], needed: 4, places: 3, windowKinds: ['pregame'] }]],
  ])('%s', (_, all, promises, there, wanted) => {
    expect(plan(all, promises, there).bottlenecks).toMatchObject(wanted);
  });

  test('what a promise may read elsewhere is not counted against the full windows', () => {
    const all = [game(1), game(2, { windows: [window('timeOut1', 'timeOut', 9)] })];
    const found = plan(all, [promise('a', { ...over(5, all), mostPerGame: 5 }), promise('b', { slots: [{ reads: 4, gameIds: ['game-1'] }] })]);
    expect([found.shortfallReads, found.bottlenecks]).toEqual([0, []]);
    const crowded = plan(all, [promise('a', { ...over(8, all), mostPerGame: 5 }), promise('b', { slots: [{ reads: 4, gameIds: ['game-1'] }] })]);
    expect(crowded.bottlenecks).toMatchObject([{ because: 'places', promiseIds: ['a', 'b'], gameIds: ['game-1'], needed: 7, places: 4 }]);
  });
});

describe('a season planned again', () => {
  test('when a game falls out only its reads move, and those that are printed stay', () => {
    const before = games(6);
    const promises = [promise('a', over(12, before)), promise('b', { ...over(6, before), windows: ['halftime', 'timeOut'] })];
    const first = plan(before, promises);
    const after = before.filter((one) => one.gameId !== 'game-3');
    const there = first.reads.map((read) => ({ ...read, placementId: null, isFixed: read.gameId === 'game-1' }));
    const again = plan(after, promises, there.filter((read) => read.gameId !== 'game-3'), 'whatIsPlaced');
    const stands = (read: { promiseId: string; gameId: string; windowKey: string; place: number }): string => `${read.promiseId} ${read.gameId} ${read.windowKey} ${read.place}`;
    const kept = new Set(again.reads.map(stands));
    expect(there.filter((read) => read.gameId !== 'game-3' && !kept.has(stands(read)))).toEqual([]);
    expect([again.shortfallReads, again.movedReads, again.movedWithinGame, again.reads.length]).toEqual([0, 0, 0, 18]);
    expect(plan(after, promises, there, 'whatIsPlaced').movedReads).toBe(3);
  });

  test('a read whose window is gone stays at its game, in another window', () => {
    const season = [game(1), game(2)];
    const found = plan(season, [promise('a', over(1, season))], [placed('a', 'game-2', 'timeOut9', 1)], 'whatIsPlaced');
    expect([perGame(found, season), found.movedReads, found.movedWithinGame]).toEqual([[0, 1], 0, 1]);
  });
});

test('where a kind holds one sponsor and its promises may go to different windows, the room is divided and the proof holds', () => {
  const season = [game(1, { windows: [window('pregame', 'pregame', 1), window('postgame', 'postgame', 1)] })];
  const ball = { ...over(1, season), readKindId: 'kind-game-ball', sponsorsPerGame: 1 };
  const found = plan(season, [
    promise('a', { ...ball, windows: ['pregame'], priority: 1 }),
    promise('b', { ...ball, windows: ['postgame'], priority: 3 }),
    promise('c', { ...over(1, season), windows: ['pregame'], readKindId: 'kind-opening', priority: 1 }),
  ]);
  expect([found.weightedShortfall, found.bound, found.isProven]).toEqual([9, 9, true]);
});
