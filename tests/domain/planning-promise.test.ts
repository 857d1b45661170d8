import { expect, test } from 'vitest';
import { addDays, dayOf } from '../../server/domain/day.ts';
import { keepingPlan, withAskedLast, withoutPromises } from '../../server/domain/planning/promise/asking.ts';
import { fitBetween, promiseAnswer, takesFromEarlier } from '../../server/domain/planning/promise/promise-answer.ts';
import type { PromiseAnswer, Solved } from '../../server/domain/planning/promise/promise-answer.ts';
import { placesOfKind, probeOf, windowKindsOf, windowsOfOneKind, withPromises } from '../../server/domain/planning/promise/left-to-sell.ts';
import type { KindToSell } from '../../server/domain/planning/promise/left-to-sell.ts';
import { planPlaces } from '../../server/domain/planning/places/plan-places.ts';
import type { PlanGame, PlanPromise, PlanSeason, SeasonPlan } from '../../server/domain/planning/season.ts';
import { checkPlan } from '../../server/domain/planning/check-plan.ts';

/** A halftime with three places in each game, two time-outs of one place each. */
const game = (number: number, more: Partial<PlanGame> = {}): PlanGame => ({
  gameId: `g${number}`, nightId: `n${number}`, label: 'Herons at Kestrels', playedOn: addDays(dayOf('2027-01-08'), 7 * (number - 1)), teamIds: ['varsity'], isLocked: false,
  windows: [
    { key: 'timeOut1', kind: 'timeOut', places: 1, groupPlaces: {}, seconds: 45 },
    { key: 'halftime', kind: 'halftime', places: 3, groupPlaces: {}, seconds: 600 },
    { key: 'timeOut2', kind: 'timeOut', places: 1, groupPlaces: {}, seconds: 45 },
  ],
  ...more,
});
const GAMES = [1, 2, 3, 4].map((number) => game(number));
const ALL = GAMES.map((one) => one.gameId);

const promise = (promiseId: string, reads: number, more: Partial<PlanPromise> = {}): PlanPromise => ({
  promiseId, source: 'commitment', dealId: promiseId, sponsorId: promiseId, sponsorName: promiseId, categoryId: promiseId, readKindId: 'concession', readKindName: 'Concession read', placeGroup: null,
  sponsorsPerGame: 9, seconds: 15, slots: [{ reads, gameIds: ALL }], windows: ['halftime'], leastPerGame: 0, mostPerGame: null, pinnedGameIds: [], priority: 2, separation: 'none', ...more,
});
const season = (...promises: PlanPromise[]): PlanSeason => ({ games: GAMES, promises, placed: [] });
const plan = (one: PlanSeason): SeasonPlan => planPlaces(one, { keeps: 'nothing' });

/** As the server solves it, without its thread. */
function solved(one: PlanSeason, askedIds: ReadonlySet<string>): Solved {
  const ranked = withAskedLast(one, askedIds);
  const after = plan(ranked);
  const before = plan(withoutPromises(ranked, askedIds));
  const beside = takesFromEarlier({ season: ranked, askedIds, before, after }) ? plan(keepingPlan(ranked, before)) : null;
  return { season: ranked, askedIds, before, after, beside };
}

function asked(one: PlanSeason, ...ids: string[]): PromiseAnswer {
  const alone = new Map(ids.map((id) => [id, solved(withoutPromises(one, new Set(ids.filter((other) => other !== id))), new Set([id]))]));
  return promiseAnswer(solved(one, new Set(ids)), alone);
}

/** Twelve places at halftime of four games; seven are promised. */
test.each<[string, number, PromiseAnswer['can'], number]>([
  ['the last read that fits', 5, 'yes', 5],
  ['the first that does not', 6, 'no', 5],
  ['ten thousand', 10_000, 'no', 5],
])('%s of an offer beside seven promised reads', (_, reads, can, most) => {
  const answer = asked(season(promise('creamery', 7), promise('offer', reads, { source: 'offer' })), 'offer');
  expect(answer).toMatchObject({ can, asked: reads, atLeast: most, atMost: most, shortBefore: 0 });
  expect(answer.bottlenecks).toEqual(can === 'yes' ? [] : [expect.objectContaining({ because: 'places', needed: 7 + reads, places: 12, promiseIds: ['creamery', 'offer'], gameIds: ALL, windowKinds: ['halftime'] })]);
});

test('what was short before is not blamed on the offer, and no earlier read is taken for it', () => {
  const answer = asked(season(promise('creamery', 15), promise('offer', 4, { source: 'offer', windows: ['halftime', 'timeOut'] })), 'offer');
  expect(answer).toMatchObject({ can: 'yes', atLeast: 4, shortBefore: 3, bottlenecks: [] });
});

test.each([1, 2, 3] as const)('an offer of priority 1 gives way to a promise of priority %d', (priority) => {
  const answer = asked(season(promise('creamery', 12, { priority }), promise('offer', 9, { source: 'offer', priority: 1 })), 'offer');
  expect(answer).toMatchObject({ can: 'no', atLeast: 0, atMost: 0, shortBefore: 0 });
});

test('the most is said for each line alone and for all of them together', () => {
  const answer = asked(season(promise('creamery', 7), promise('one', 4, { source: 'offer', dealId: 'offer' }), promise('two', 6, { source: 'offer', dealId: 'offer' })), 'one', 'two');
  expect(answer).toMatchObject({ can: 'no', asked: 10, atLeast: 5, atMost: 5 });
  expect(answer.lines.map((line) => [line.asked, line.atLeastAlone, line.atMostAlone])).toEqual([[4, 4, 4], [6, 5, 5]]);
  expect(answer.lines.reduce((sum, line) => sum + line.inPlan, 0)).toBe(5);
});

test('a line that counts game by game names the games without a place', () => {
  const full = promise('creamery', 3, { slots: [{ reads: 3, gameIds: ['g2'] }, { reads: 3, gameIds: ['g4'] }] });
  const answer = asked(season(full, promise('offer', 0, { source: 'offer', slots: ALL.map((id) => ({ reads: 1, gameIds: [id] })) })), 'offer');
  expect(answer).toMatchObject({ can: 'no', asked: 4, atLeast: 2 });
  expect(answer.lines[0]!.shortGameIds).toEqual(['g2', 'g4']);
});

test('an offer that would leave an earlier sponsor fewer reads in a game is refused, and the sponsor keeps them all', () => {
  const ball = { readKindId: 'ball', readKindName: 'Game ball', sponsorsPerGame: 1 };
  const answer = asked(season(promise('hardware', 8, { ...ball, mostPerGame: 2 }), promise('offer', 2, { ...ball, source: 'offer' })), 'offer');
  expect(answer).toMatchObject({ can: 'no', atLeast: 0, shortBefore: 0 });
});

test('where a better plan could not be ruled out in time, the answer lies between', () => {
  const one = season(promise('offer', 6, { source: 'offer' }));
  const found = { ...plan(withAskedLast(one, new Set(['offer']))), shortfall: [{ promiseId: 'offer', slot: 0, reads: 2 }], shortfallReads: 2, weightedShortfall: 2, by: 'company' as const };
  const ranked = withAskedLast(one, new Set(['offer']));
  const given = (bound: number): Solved => ({ season: ranked, askedIds: new Set(['offer']), before: plan(withoutPromises(ranked, new Set(['offer']))), after: { ...found, bound }, beside: null });
  expect([0, 0.2, 1, 2].map((bound) => ({ ...fitBetween(given(bound)), can: promiseAnswer(given(bound), new Map()).can }))).toEqual([
    { asked: 6, atLeast: 4, atMost: 6, can: 'between' },
    { asked: 6, atLeast: 4, atMost: 5, can: 'no' },
    { asked: 6, atLeast: 4, atMost: 5, can: 'no' },
    { asked: 6, atLeast: 4, atMost: 4, can: 'no' },
  ]);
});

const concession: KindToSell = { readKindId: 'concession', readKindName: 'Concession read', placeGroup: null, sponsorsPerGame: 9, seconds: 15, windows: ['halftime', 'timeOut'] };

function left(one: PlanSeason, kind: KindToSell, gameIds = ALL, windows?: string[]): number {
  const probe = probeOf(kind, one, gameIds, windows ? { windows } : {});
  return fitBetween(solved(withPromises(one, [probe]), new Set([probe.promiseId]))).atLeast;
}

test('what is left to sell counts on others moving aside, so it is more than the places that are free now', () => {
  const one = season(promise('creamery', 8, { windows: ['timeOut', 'halftime'] }), promise('ball', 12, { readKindId: 'ball' }));
  const halftimeOnly: KindToSell = { ...concession, windows: ['halftime'] };
  expect(left(one, concession)).toBe(0);
  expect(left(season(promise('creamery', 8, { windows: ['halftime', 'timeOut'] })), halftimeOnly)).toBe(12);
  expect(left(one, concession, ['g1'])).toBe(0);
  expect(left(season(promise('creamery', 8)), concession)).toBe(12);
  expect(left(season(promise('creamery', 8)), concession, ALL, windowsOfOneKind(concession, GAMES, 'timeOut'))).toBe(8);
});

test('places are counted with what is promised and what is held in them', () => {
  const one = season(promise('creamery', 5), promise('offer', 4, { source: 'offer', windows: ['timeOut'] }));
  const base = plan(one);
  expect(placesOfKind(concession, one, base.reads, new Set(ALL))).toEqual({ games: 4, places: 20, taken: 5, held: 4 });
  expect(placesOfKind(concession, one, base.reads, new Set(ALL), 'halftime')).toEqual({ games: 4, places: 12, taken: 5, held: 0 });
  expect(windowKindsOf(concession, GAMES)).toEqual(['timeOut', 'halftime']);
});

test('a group of read kinds holds no more than its own places of a window', () => {
  const grouped: KindToSell = { ...concession, placeGroup: 'food', windows: ['halftime'] };
  const games = GAMES.map((one) => ({ ...one, windows: one.windows.map((window) => (window.key === 'halftime' ? { ...window, groupPlaces: { food: 1 } } : window)) }));
  expect(left({ games, promises: [], placed: [] }, grouped)).toBe(4);
});

test('the plan of what is left breaks nothing when it is counted again', () => {
  const one = season(promise('creamery', 8, { windows: ['timeOut', 'halftime'] }), promise('tire', 4, { mostPerGame: 1 }));
  const probe = probeOf(concession, one, ALL);
  const both = withAskedLast(withPromises(one, [probe]), new Set([probe.promiseId]));
  expect(checkPlan(both, plan(both).reads).filter((fault) => fault.severity === 'wall')).toEqual([]);
});
