import { dayOf } from '../../server/domain/day.ts';
import type { PlacedRead, PlanGame, PlanPromise, PlanSeason, PlanWindow } from '../../server/domain/planning/season.ts';

/** A window with a place for one read, and room to say it. */
export function aWindow(key: string, options: Partial<PlanWindow> = {}): PlanWindow {
  return { key, kind: 'timeOut', places: 2, groupPlaces: {}, seconds: null, ...options };
}

/** `g1` is the first Friday of December, and so on. */
export function aGame(number: number, windows: readonly PlanWindow[], options: Partial<PlanGame> = {}): PlanGame {
  const playedOn = dayOf(`2026-12-${String(number).padStart(2, '0')}`);
  return { gameId: `g${number}`, nightId: `n${number}`, label: `Game ${number}`, playedOn, teamIds: [], windows, isLocked: false, ...options };
}

/** So many reads of 15 seconds over some games, in any time-out; each name is a sponsor, of a category of its own where none is told. */
export function aPromise(name: string, reads: number, games: readonly string[], options: Partial<PlanPromise> = {}): PlanPromise {
  return {
    promiseId: name, source: 'commitment', dealId: `deal ${name}`, sponsorId: name, sponsorName: name, categoryId: `category of ${name}`, readKindId: 'timeOutRead', readKindName: 'Time-out read',
    placeGroup: null, sponsorsPerGame: 99, seconds: 15, slots: [{ reads, gameIds: games }], windows: ['timeOut'], leastPerGame: 0, mostPerGame: null, pinnedGameIds: [], priority: 2,
    separation: 'window', ...options,
  };
}

export function aPlaced(promiseId: string, gameId: string, windowKey: string, place = 1, isFixed = false): PlacedRead {
  return { promiseId, gameId, windowKey, place, placementId: `${promiseId} ${gameId} ${windowKey} ${place}`, isFixed };
}

export function aPlanSeason(games: readonly PlanGame[], promises: readonly PlanPromise[], placed: readonly PlacedRead[] = []): PlanSeason {
  return { games, promises, placed };
}
