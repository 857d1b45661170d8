import { addDays, dayOf } from '../../server/domain/day.ts';
import type { PlacedRead, PlanGame, PlanPromise, PlanSeason, PlanSlot, PlanWindow } from '../../server/domain/planning/season.ts';

/** Numbers from 0 on, below 1, that are the same for the same seed (a linear congruence of 2^32; Numerical Recipes, from memory). */
export function chance(seed: number): () => number {
  let state = (seed * 2_654_435_761 + 12_345) >>> 0;
  return () => (state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0) / 2 ** 32;
}

export interface RandomSeasonSize {
  readonly games: number;
  readonly sponsors: number;
  readonly commitments: number;
}

const SPONSORS = ['Juniper & Pike Hardware', 'Copperline Credit Union', 'Snowmelt Creamery', 'Halvorsen Orthodontics', 'Pinyon Print Works', 'Mirabel’s Kitchen', 'Okafor Family Insurance', 'Blue Lantern Tire'];
const KINDS = [
  { id: 'kind-opening', name: 'Opening read', windows: ['pregame'], group: null, sponsorsPerGame: 1 },
  { id: 'kind-time-out', name: 'Time-out read', windows: ['timeOut'], group: null, sponsorsPerGame: 99 },
  { id: 'kind-halftime', name: 'Halftime read', windows: ['halftime'], group: 'long', sponsorsPerGame: 2 },
  { id: 'kind-any', name: 'Any break', windows: ['betweenPeriods', 'timeOut', 'halftime'], group: null, sponsorsPerGame: 99 },
  { id: 'kind-story', name: 'Story', windows: ['halftime', 'pregame'], group: 'long', sponsorsPerGame: 99 },
  { id: 'kind-closing', name: 'Closing read', windows: ['postgame', 'timeOut4'], group: 'short', sponsorsPerGame: 99 },
] as const;

/**
 * A season drawn by chance, small enough to be solved in many ways and with all that makes planning hard: windows that are
 * full or not ours, groups, limits, pins, floors, locked nights, reads that stay, doubleheaders, slots by game and by night.
 */
export function randomPlanSeason(seed: number, size: RandomSeasonSize = { games: 7, sponsors: 5, commitments: 8 }): PlanSeason {
  const draw = chance(seed);
  const upTo = (most: number): number => Math.floor(draw() * (most + 1));
  const games = Array.from({ length: Math.max(1, size.games - upTo(3)) }, (_, at) => randomGame(at, draw));
  const promises = Array.from({ length: Math.max(1, size.commitments - upTo(3)) }, (_, at) => randomPromise(at, size.sponsors, games, draw));
  return { games, promises, placed: randomPlaced(games, promises, draw) };
}

function randomGame(at: number, draw: () => number): PlanGame {
  const oneOf = (...places: readonly number[]): number => places[Math.floor(draw() * places.length)]!;
  const window = (key: string, kind: PlanWindow['kind'], places: number, groupPlaces: Record<string, number> = {}): PlanWindow => ({ key, kind, places, groupPlaces, seconds: null });
  const night = draw() < 0.2 && at > 0 ? at - 1 : at;
  return {
    gameId: `game-${String(at).padStart(3, '0')}`,
    nightId: `night-${night}`,
    label: ['Herons', 'Miners', 'Otters', 'Larks', 'Pronghorns'][at % 5]! + ' at Kestrels',
    playedOn: addDays(dayOf('2026-12-01'), night * 3),
    teamIds: [at % 2 === 0 ? 'varsity-girls' : 'varsity-boys'],
    windows: [
      window('pregame', 'pregame', oneOf(0, 1, 2)),
      window('timeOut1', 'timeOut', oneOf(0, 1, 1, 2)),
      window('timeOut2', 'timeOut', oneOf(0, 1, 1)),
      window('halftime', 'halftime', oneOf(0, 2, 3), draw() < 0.6 ? { long: oneOf(0, 1, 2) } : {}),
      window('betweenPeriods3', 'betweenPeriods', oneOf(0, 1)),
      window('timeOut4', 'timeOut', oneOf(1, 2), draw() < 0.3 ? { short: 1 } : {}),
      window('postgame', 'postgame', oneOf(0, 0, 1)),
    ],
    isLocked: draw() < 0.08,
  };
}

function randomPromise(at: number, sponsors: number, games: readonly PlanGame[], draw: () => number): PlanPromise {
  const sponsor = Math.floor(draw() * sponsors);
  const kind = KINDS[Math.floor(draw() * KINDS.length)]!;
  const windows: readonly string[] = draw() < 0.2 ? kind.windows.slice(0, 1) : kind.windows;
  const own = games.filter(() => draw() < 0.8).map((game) => game.gameId);
  const most = draw() < 0.4 ? 1 + Math.floor(draw() * 2) : null;
  return {
    promiseId: `promise-${String(at).padStart(3, '0')}`,
    source: 'commitment',
    dealId: `deal-${sponsor}`,
    sponsorId: `sponsor-${sponsor}`,
    sponsorName: SPONSORS[sponsor % SPONSORS.length]!,
    categoryId: `category-${sponsor}`,
    readKindId: kind.id,
    readKindName: kind.name,
    placeGroup: kind.group,
    sponsorsPerGame: kind.sponsorsPerGame,
    seconds: 15,
    slots: randomSlots(own, games, draw),
    windows,
    leastPerGame: draw() < 0.25 ? 1 : 0,
    mostPerGame: most,
    pinnedGameIds: own.filter(() => draw() < 0.08),
    priority: ([1, 2, 3] as const)[Math.floor(draw() * 3)]!,
    separation: 'none',
  };
}

function randomSlots(own: readonly string[], games: readonly PlanGame[], draw: () => number): PlanSlot[] {
  const counting = draw();
  if (counting < 0.7) return [{ reads: Math.floor(draw() * (own.length * 1.6 + 1)), gameIds: own }];
  const each = 1 + Math.floor(draw() * 2);
  if (counting < 0.85) return own.map((gameId) => ({ reads: each, gameIds: [gameId] }));
  const nights = new Set(games.map((game) => game.nightId));
  return [...nights].map((nightId) => ({ reads: each, gameIds: games.filter((game) => game.nightId === nightId && own.includes(game.gameId)).map((game) => game.gameId) }))
    .filter((slot) => slot.gameIds.length > 0);
}

/** Some reads have a place already, none beyond a limit: a few of them stay, and a few are of promises nobody names. */
function randomPlaced(games: readonly PlanGame[], promises: readonly PlanPromise[], draw: () => number): PlacedRead[] {
  if (draw() < 0.3) return [];
  const placed: PlacedRead[] = [];
  for (const game of games) {
    for (const window of game.windows) {
      for (let place = 1; place <= window.places; place += 1) {
        if (draw() > 0.3) continue;
        const isStrange = draw() < 0.1;
        const able = promises.filter((promise) => mayStand(promise, game, window, placed));
        const promise = able[Math.floor(draw() * able.length)];
        if (promise === undefined && !isStrange) continue;
        const promiseId = isStrange ? 'promise-of-nobody' : promise!.promiseId;
        placed.push({ promiseId, gameId: game.gameId, windowKey: window.key, place, placementId: `placement-${placed.length}`, isFixed: draw() < 0.25 });
      }
    }
  }
  return placed;
}

function mayStand(promise: PlanPromise, game: PlanGame, window: PlanWindow, placed: readonly PlacedRead[]): boolean {
  const slot = promise.slots.find((one) => one.gameIds.includes(game.gameId));
  if (slot === undefined || !(promise.windows.includes(window.key) || promise.windows.includes(window.kind))) return false;
  const own = placed.filter((read) => read.promiseId === promise.promiseId);
  const here = own.filter((read) => read.gameId === game.gameId).length;
  const inSlot = own.filter((read) => slot.gameIds.includes(read.gameId)).length;
  const inWindow = placed.filter((read) => read.gameId === game.gameId && read.windowKey === window.key).length;
  const groupLimit = promise.placeGroup === null ? Infinity : (window.groupPlaces[promise.placeGroup] ?? Infinity);
  return inSlot < slot.reads && here < (promise.mostPerGame ?? Infinity) && inWindow < groupLimit && promise.sponsorsPerGame > 2;
}
