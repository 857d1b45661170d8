import { describe, expect, test } from 'vitest';
import { dayOf } from '../../server/domain/day.ts';
import { checkPlan } from '../../server/domain/planning/check-plan.ts';
import { PLAN_FAULTS } from '../../server/domain/planning/plan-fault.ts';
import type { PlanFault, PlanFaultCode } from '../../server/domain/planning/plan-fault.ts';
import type { PlacedRead, PlanGame, PlanPromise, PlanRead, PlanSeason, PlanWindow } from '../../server/domain/planning/season.ts';
import { faultInWords } from '../../server/domain/planning/words/fault.ts';
import { namesOf } from '../../server/domain/planning/words/names.ts';

const window = (key: string, change: Partial<PlanWindow> = {}): PlanWindow => ({
  key, kind: key.replace(/\d+$/, '') as PlanWindow['kind'], places: 2, groupPlaces: {}, seconds: 60, ...change,
});
const WINDOWS = [window('pregame', { seconds: null }), window('timeOut1'), window('timeOut2'), window('halftime', { places: 3, seconds: null, groupPlaces: { concession: 1 } })];
const LABELS: Record<string, string> = { herons: 'Herons at Kestrels', miners: 'Miners at Kestrels', otters: 'Otters at Kestrels' };
const game = (gameId: string, change: Partial<PlanGame> = {}): PlanGame => ({
  gameId, nightId: `night of ${gameId}`, label: LABELS[gameId]!, playedOn: dayOf('2026-12-04'), teamIds: [], windows: WINDOWS, isLocked: false, ...change,
});
const promise = (promiseId: string, change: Partial<PlanPromise> = {}): PlanPromise => ({
  promiseId, source: 'commitment', dealId: `deal of ${promiseId}`, sponsorId: promiseId, sponsorName: promiseId, categoryId: `category of ${promiseId}`,
  readKindId: `kind of ${promiseId}`, readKindName: 'time-out read', placeGroup: null, sponsorsPerGame: 9, seconds: 20,
  slots: [{ reads: 9, gameIds: ['herons', 'miners', 'otters'] }], windows: ['pregame', 'timeOut', 'halftime'], leastPerGame: 0, mostPerGame: null,
  pinnedGameIds: [], priority: 2, separation: 'none', ...change,
});
const read = (promiseId: string, windowKey: string, place = 1, gameId = 'herons'): PlanRead => ({ promiseId, gameId, windowKey, place });
const placed = (one: PlanRead, isFixed = true): PlacedRead => ({ ...one, placementId: null, isFixed });

const CREAMERY = 'Snowmelt Creamery';
const KITCHEN = "Mirabel's Kitchen";
const TIRE = 'Blue Lantern Tire';
const food = { categoryId: 'food' };

interface Plan {
  readonly promises: readonly PlanPromise[];
  readonly games?: readonly PlanGame[];
  readonly placed?: readonly PlacedRead[];
  readonly reads: readonly PlanRead[];
}
const seasonOf = (plan: Plan): PlanSeason => ({ games: plan.games ?? ['herons', 'miners', 'otters'].map((id) => game(id)), promises: plan.promises, placed: plan.placed ?? [] });
const faultsOf = (plan: Plan): PlanFault[] => checkPlan(seasonOf(plan), plan.reads);
const sentencesOf = (plan: Plan): string[] => faultsOf(plan).map((fault) => faultInWords(fault, namesOf(seasonOf(plan))));

const two = [promise(CREAMERY), promise(KITCHEN)];
const rivals = (separation: PlanPromise['separation']) => [promise(CREAMERY, food), promise(KITCHEN, { ...food, separation })];
const [HERONS, MINERS] = [read(CREAMERY, 'halftime'), read(CREAMERY, 'halftime', 1, 'miners')];
const locked = [game('herons', { isLocked: true }), game('miners'), game('otters')];
const perGame = { slots: [{ reads: 1, gameIds: ['herons'] }, { reads: 1, gameIds: ['miners'] }] };

/** The last plan that holds beside the first that does not. */
const RULES: readonly { code: PlanFaultCode; holds: Plan; breaks: Plan; says: string }[] = [
  { code: 'unknown-promise', holds: { promises: two, placed: [placed(read('a contract that ended', 'pregame'))], reads: [read('a contract that ended', 'pregame')] },
    breaks: { promises: two, reads: [read('a contract that ended', 'pregame')] }, says: 'A read belongs to no promise of this season.' },
  { code: 'unknown-game', holds: { promises: two, reads: [read(CREAMERY, 'pregame', 1, 'otters')] }, breaks: { promises: two, reads: [read(CREAMERY, 'pregame', 1, 'larks')] },
    says: 'Snowmelt Creamery would be read at a game that is not there any more.' },
  { code: 'unknown-window', holds: { promises: two, reads: [read(CREAMERY, 'timeOut2')] }, breaks: { promises: two, reads: [read(CREAMERY, 'timeOut3')] }, says: 'Herons at Kestrels has no 3rd time-out.' },
  { code: 'place-taken-twice', holds: { promises: two, reads: [read(CREAMERY, 'timeOut1', 1), read(KITCHEN, 'timeOut1', 2)] },
    breaks: { promises: two, reads: [read(CREAMERY, 'timeOut1', 1), read(KITCHEN, 'timeOut1', 1)] }, says: "Mirabel's Kitchen and Snowmelt Creamery would have the same place in the 1st time-out." },
  { code: 'window-full', holds: { promises: two, reads: [1, 2].map((place) => read(CREAMERY, 'timeOut1', place)) }, breaks: { promises: two, reads: [1, 3].map((place) => read(CREAMERY, 'timeOut1', place)) },
    says: 'Snowmelt Creamery would stand on place 3 of the 1st time-out, which holds 2 reads.' },
  { code: 'window-full', holds: { promises: two, reads: [1, 2, 3].map((place) => read(CREAMERY, 'halftime', place)) }, breaks: { promises: two, reads: [1, 2, 3, 4].map((place) => read(CREAMERY, 'halftime', place)) },
    says: 'Halftime of Herons at Kestrels would have 4 reads and holds 3.' },
  { code: 'window-full', holds: { promises: two, placed: [placed(read('another season', 'timeOut1', 1))], reads: [read(CREAMERY, 'timeOut1', 2)] },
    breaks: { promises: two, games: [game('herons', { windows: [window('timeOut1', { places: 0 })] })], reads: [read(CREAMERY, 'timeOut1')] }, says: 'The 1st time-out of Herons at Kestrels holds no reads of yours.' },
  { code: 'group-full', holds: { promises: [promise(CREAMERY, { placeGroup: 'concession' }), promise(KITCHEN)], reads: [read(CREAMERY, 'halftime', 1), read(KITCHEN, 'halftime', 2)] },
    breaks: { promises: two.map((one) => ({ ...one, placeGroup: 'concession' })), reads: [read(CREAMERY, 'halftime', 1), read(KITCHEN, 'halftime', 2)] }, says: 'Halftime would have 2 reads of this kind and holds 1.' },
  { code: 'window-not-of-kind', holds: { promises: [promise(CREAMERY, { windows: ['timeOut2'] })], reads: [read(CREAMERY, 'timeOut2')] },
    breaks: { promises: [promise(CREAMERY, { windows: ['timeOut2'] })], reads: [read(CREAMERY, 'timeOut1')] }, says: 'The time-out read of Snowmelt Creamery is not read in the 1st time-out.' },
  { code: 'game-not-of-slot', holds: { promises: [promise(CREAMERY, perGame)], reads: [read(CREAMERY, 'pregame', 1, 'miners')] }, breaks: { promises: [promise(CREAMERY, perGame)], reads: [read(CREAMERY, 'pregame', 1, 'otters')] },
    says: 'Snowmelt Creamery is not promised for Otters at Kestrels.' },
  { code: 'more-than-slot', holds: { promises: [promise(CREAMERY, perGame)], reads: [HERONS, MINERS] }, breaks: { promises: [promise(CREAMERY, perGame)], reads: [HERONS, read(CREAMERY, 'pregame')] },
    says: 'Snowmelt Creamery would have more than the 1 read still to be placed there.' },
  { code: 'more-than-slot', holds: { promises: [promise(CREAMERY, { slots: [{ reads: 1, gameIds: ['herons', 'miners'] }, { reads: 1, gameIds: ['herons'] }] })], reads: [HERONS, MINERS] },
    breaks: { promises: [promise(CREAMERY, { slots: [{ reads: 1, gameIds: ['herons', 'miners'] }, { reads: 1, gameIds: ['herons'] }] })], reads: [MINERS, read(CREAMERY, 'pregame', 1, 'miners')] },
    says: 'Snowmelt Creamery would have more than the 1 read still to be placed there.' },
  { code: 'sponsors-per-game', holds: { promises: two.map((one) => ({ ...one, readKindId: 'bank shot', sponsorsPerGame: 1 })), reads: [HERONS, read(CREAMERY, 'pregame'), read(KITCHEN, 'halftime', 1, 'miners')] },
    breaks: { promises: two.map((one) => ({ ...one, readKindId: 'bank shot', sponsorsPerGame: 1 })), reads: [HERONS, read(KITCHEN, 'pregame')] }, says: 'Herons at Kestrels would have 2 sponsors of the time-out read and may have 1.' },
  { code: 'most-per-game', holds: { promises: [promise(CREAMERY, { mostPerGame: 2 })], reads: [HERONS, read(CREAMERY, 'pregame')] },
    breaks: { promises: [promise(CREAMERY, { mostPerGame: 2 })], reads: [HERONS, read(CREAMERY, 'pregame'), read(CREAMERY, 'timeOut1')] }, says: 'Snowmelt Creamery would have 3 reads at Herons at Kestrels and may have 2.' },
  { code: 'fixed-read-gone', holds: { promises: two, placed: [placed(HERONS, false)], reads: [MINERS] }, breaks: { promises: two, placed: [placed(HERONS, true)], reads: [MINERS] },
    says: 'Snowmelt Creamery is printed or pinned in halftime of Herons at Kestrels and stays there.' },
  { code: 'locked-night-touched', holds: { promises: two, games: locked, placed: [placed(HERONS)], reads: [HERONS, MINERS] }, breaks: { promises: two, games: locked, placed: [placed(HERONS)], reads: [HERONS, read(CREAMERY, 'pregame')] },
    says: 'The night of Herons at Kestrels is locked.' },
  { code: 'locked-night-touched', holds: { promises: two, placed: [placed(HERONS, false)], reads: [] }, breaks: { promises: two, games: locked, placed: [placed(HERONS, false)], reads: [] }, says: 'The night of Herons at Kestrels is locked.' },
  { code: 'seconds-exceeded', holds: { promises: [promise(CREAMERY, { seconds: 30 }), promise(KITCHEN, { seconds: 30 })], reads: [read(CREAMERY, 'timeOut1', 1), read(KITCHEN, 'timeOut1', 2)] },
    breaks: { promises: [promise(CREAMERY, { seconds: 30 }), promise(KITCHEN, { seconds: 31 })], reads: [read(CREAMERY, 'timeOut1', 1), read(KITCHEN, 'timeOut1', 2)] }, says: 'The reads of the 1st time-out would take 61 seconds; it has 60.' },
  { code: 'competitors-in-window', holds: { promises: rivals('none'), reads: [read(CREAMERY, 'timeOut2', 1), read(KITCHEN, 'timeOut2', 2)] },
    breaks: { promises: rivals('window'), reads: [read(KITCHEN, 'timeOut2', 1), read(CREAMERY, 'timeOut2', 2)] }, says: "Snowmelt Creamery and Mirabel's Kitchen would stand next to each other in the 2nd time-out." },
  { code: 'competitors-next-to-each-other', holds: { promises: rivals('window'), reads: [read(CREAMERY, 'timeOut1'), read(KITCHEN, 'timeOut2')] },
    breaks: { promises: rivals('next'), reads: [read(CREAMERY, 'timeOut1'), read(KITCHEN, 'timeOut2')] }, says: "Mirabel's Kitchen in the 2nd time-out would come right beside Snowmelt Creamery in the 1st time-out." },
  { code: 'competitors-in-game', holds: { promises: rivals('next'), reads: [read(CREAMERY, 'pregame'), read(KITCHEN, 'timeOut2')] },
    breaks: { promises: rivals('game'), reads: [read(CREAMERY, 'pregame'), read(KITCHEN, 'timeOut2')] }, says: "Mirabel's Kitchen and Snowmelt Creamery would both be read at Herons at Kestrels." },
  { code: 'pinned-game-without-read', holds: { promises: [promise(CREAMERY, { pinnedGameIds: ['herons', 'larks'] })], reads: [HERONS] }, breaks: { promises: [promise(CREAMERY, { pinnedGameIds: ['herons'] })], reads: [MINERS] },
    says: 'Snowmelt Creamery was promised Herons at Kestrels aloud and would have no read there.' },
  { code: 'least-per-game-missed', holds: { promises: [promise(CREAMERY, { leastPerGame: 1, slots: [{ reads: 1, gameIds: ['herons', 'miners'] }] })], reads: [MINERS] },
    breaks: { promises: [promise(CREAMERY, { leastPerGame: 1, slots: [{ reads: 2, gameIds: ['herons', 'miners'] }] })], reads: [MINERS] }, says: 'Snowmelt Creamery would have no reads at Herons at Kestrels; at least 1 were wished for.' },
];

describe('a plan is checked by counting', () => {
  test.each(RULES)('$code: $says', ({ code, holds, breaks, says }) => {
    expect(faultsOf(holds)).toEqual([]);
    expect(faultsOf(breaks)).toMatchObject([{ code, severity: PLAN_FAULTS[code] }]);
    expect(sentencesOf(breaks)).toEqual([says]);
  });

  test('every fault has its rule', () => {
    expect([...new Set(RULES.map((rule) => rule.code))].sort()).toEqual(Object.keys(PLAN_FAULTS).sort());
  });

  test('what only reads break that must stay is told and is no wall', () => {
    const three = [1, 2, 3].map((place) => read(CREAMERY, 'timeOut1', place));
    const plan = { promises: [promise(CREAMERY)], reads: three };
    expect(faultsOf({ ...plan, placed: three.map((one) => placed(one)) })).toMatchObject([{ code: 'window-full', severity: 'wish' }]);
    expect(faultsOf({ ...plan, placed: three.slice(1).map((one) => placed(one)) })).toMatchObject([{ code: 'window-full', severity: 'wall', has: 3, limit: 2 }]);
  });

  test('sponsors of different categories and reads of one sponsor may stand side by side', () => {
    const strict = { separation: 'game' } as const;
    const reads = [read(CREAMERY, 'timeOut1', 1), read(TIRE, 'timeOut1', 2), read(CREAMERY, 'timeOut2', 1)];
    expect(faultsOf({ promises: [promise(CREAMERY, { ...strict, ...food }), promise(TIRE, { ...strict, categoryId: 'tires' })], reads })).toEqual([]);
  });

  test('a place that a read of an ended contract keeps is counted once, listed or not', () => {
    const stranger = read('a contract that ended', 'timeOut1', 1);
    const plan = { promises: [promise(CREAMERY)], placed: [placed(stranger)] };
    expect(faultsOf({ ...plan, reads: [read(CREAMERY, 'timeOut1', 2)] })).toEqual([]);
    expect(faultsOf({ ...plan, reads: [stranger, read(CREAMERY, 'timeOut1', 2)] })).toEqual([]);
    expect(faultsOf({ ...plan, reads: [read(CREAMERY, 'timeOut1', 1)] })).toMatchObject([{ code: 'place-taken-twice', severity: 'wall' }]);
  });
});
