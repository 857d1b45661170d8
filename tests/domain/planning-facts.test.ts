import { describe, expect, test } from 'vitest';
import { isStillToPlan, planWindows } from '../../server/domain/planning/facts/plan-games.ts';
import type { GameToPlan } from '../../server/domain/planning/facts/plan-games.ts';
import { planPromise, windowsOfPromise } from '../../server/domain/planning/facts/promise-to-plan.ts';
import type { GameOfPromise, PromiseToPlan } from '../../server/domain/planning/facts/promise-to-plan.ts';
import type { Day } from '../../server/domain/day.ts';
import { profileFor, windowsOf } from '../../server/domain/season/sport-profile.ts';
import type { PlacedRead } from '../../server/domain/planning/season.ts';

const day = (text: string): Day => text as Day;
const TODAY = day('2026-12-11');

describe('a game can still be planned', () => {
  const game: GameToPlan = { isHome: true, announced: true, class: 'conference', status: 'planned', playedOn: TODAY, nightId: 'night', isSignedOff: false };
  test.each<[string, Partial<GameToPlan>, boolean]>([
    ['today', {}, true],
    ['but not yesterday', { playedOn: day('2026-12-10') }, false],
    ['away it is somebody else’s', { isHome: false }, false],
    ['where nobody announces there is nothing to read', { announced: false }, false],
    ['an invitational is somebody else’s program', { class: 'invitational' }, false],
    ['a postponed game waits for its day', { status: 'postponed' }, false],
    ['a game under way is told by its log', { status: 'underWay' }, false],
    ['without a night there is no packet', { nightId: null }, false],
    ['a night that is signed off is closed', { isSignedOff: true }, false],
  ])('%s', (_, change, answer) => {
    expect(isStillToPlan({ ...game, ...change }, TODAY)).toBe(answer);
  });
});

test('time-outs nobody relies on have no places, and a window has the seconds that are left after the warning', () => {
  const profile = profileFor('basketball', 2026);
  const windows = planWindows(windowsOf(profile), profile, { halftimeSeconds: 600, timeOutsReliedOn: 1 });
  const places = Object.fromEntries(windows.map(({ key, places: count }) => [key, count]));
  expect([places['timeOut1']! > 0, places['timeOut2']]).toEqual([true, 0]);
  const warning = profile.breaks.find((one) => one.halftime)!.warningSeconds;
  expect(windows.find(({ key }) => key === 'halftime')!.seconds).toBe(600 - warning);
});

test('a window named by its key comes before the others of its kind', () => {
  expect(windowsOfPromise(['timeout2', 'halftime'], [])).toEqual(['timeOut2', 'timeOut', 'halftime']);
  expect(windowsOfPromise(['timeOut2', 'halftime'], ['halftime'])).toEqual(['halftime']);
});

const game = (id: string, playedOn: string, more: Partial<GameOfPromise> = {}): GameOfPromise => ({
  id, playedOn: day(playedOn), movedFromOn: null, status: 'planned', class: 'regular', level: 'varsity', announced: true, isHome: true, teamIds: ['kestrels'], nightId: `night of ${playedOn}`, ...more,
});
const promise = (more: Partial<PromiseToPlan>): PromiseToPlan => ({
  id: 'reads', source: 'commitment', dealId: 'contract', sponsorId: 'creamery', sponsorName: 'Snowmelt Creamery', categoryId: 'food', readKindId: 'concession', readKindName: 'Concession read',
  placeGroup: null, sponsorsPerGame: 3, seconds: 15, kindWindows: ['halftime'], counting: 'perTerm', reads: 8, startsOn: day('2026-12-01'), endsOn: day('2027-01-31'), teamIds: [], levels: [],
  windowKinds: [], blackoutDays: [], leastPerGame: null, mostPerGame: null, pinnedGameIds: [], priority: 2, separation: 'window', owed: () => 8, ...more,
});
const read = (gameId: string, isFixed: boolean, promiseId = 'reads'): PlacedRead => ({ promiseId, gameId, windowKey: 'halftime', place: 1, placementId: `at ${gameId}`, isFixed });

test('a game that moved past the last day keeps its reads, one that moved onto a day without reads does not', () => {
  const games = [game('moved out', '2027-02-05', { movedFromOn: day('2027-01-29') }), game('moved onto', '2027-02-06', { movedFromOn: day('2027-01-30') }), game('later', '2027-02-07')];
  expect(planPromise(promise({ blackoutDays: [day('2027-02-06')] }), games, []).slots).toEqual([{ reads: 8, gameIds: ['moved out'] }]);
});

test('a promise by the night has one slot for a doubleheader, one by the game has two', () => {
  const games = [game('junior varsity', '2026-12-11', { level: 'juniorVarsity' }), game('varsity', '2026-12-11'), game('elsewhere', '2026-12-11', { nightId: 'another venue' })];
  expect(planPromise(promise({ counting: 'perNight', owed: () => 2 }), games, []).slots).toEqual([
    { reads: 2, gameIds: ['junior varsity', 'varsity'] },
    { reads: 2, gameIds: ['elsewhere'] },
  ]);
  expect(planPromise(promise({ counting: 'perGame', owed: () => 1 }), games, []).slots).toEqual(['junior varsity', 'varsity', 'elsewhere'].map((id) => ({ reads: 1, gameIds: [id] })));
});

test('a slot never asks for less than is printed in it, and what is printed elsewhere counts for the term', () => {
  const games = [game('first', '2026-12-11'), game('second', '2026-12-18')];
  expect(planPromise(promise({ owed: () => 1 }), games, [read('first', true), read('second', true), read('second', false)]).slots[0]!.reads).toBe(2);
  expect(planPromise(promise({ endsOn: day('2026-12-12') }), games, [read('second', true)]).slots).toEqual([{ reads: 7, gameIds: ['first'] }]);
  expect(planPromise(promise({ endsOn: day('2026-12-12'), owed: () => 1 }), games, [read('first', true), read('second', true)]).slots).toEqual([{ reads: 1, gameIds: ['first'] }]);
  expect(planPromise(promise({}), [], []).slots).toEqual([{ reads: 8, gameIds: [] }]);
});
