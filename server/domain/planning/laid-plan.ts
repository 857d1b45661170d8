import { PLAN_FAULTS } from './plan-fault.ts';
import type { PlanFault, PlanFaultCode } from './plan-fault.ts';
import type { PlanGame, PlanPromise, PlanRead, PlanSeason, PlanWindow } from './season.ts';

/** A read of the plan with what it stands on. */
export interface LaidRead extends PlanRead {
  /** null for a read of a promise the season does not name: it only takes its place */
  readonly promise: PlanPromise | null;
  readonly mustStay: boolean;
}

export interface LaidWindow {
  readonly game: PlanGame;
  readonly window: PlanWindow;
  readonly reads: readonly LaidRead[];
}

export const placeOf = (read: PlanRead): string => `${read.promiseId} ${read.gameId} ${read.windowKey} ${read.place}`;

/** What is listed, by what `keyOf` says of each, in the order of the list. */
export function grouped<Item>(items: readonly Item[], keyOf: (item: Item) => string): ReadonlyMap<string, Item[]> {
  const groups = new Map<string, Item[]>();
  for (const item of items) {
    const group = groups.get(keyOf(item));
    if (group === undefined) groups.set(keyOf(item), [item]);
    else group.push(item);
  }
  return groups;
}

/** The reads of a plan laid out by game and window. */
export class LaidPlan {
  readonly promises: ReadonlyMap<string, PlanPromise>;
  /** reads that stand nowhere */
  readonly unknown: readonly PlanFault[];
  /** reads that stand somewhere, by game; games in the order of play */
  readonly byGame: ReadonlyMap<string, LaidRead[]>;
  readonly windows: readonly LaidWindow[];

  constructor(readonly season: PlanSeason, readonly listed: readonly PlanRead[]) {
    this.promises = new Map(season.promises.map((promise) => [promise.promiseId, promise]));
    this.byGame = new Map(season.games.map((game) => [game.gameId, []]));
    const windows = new Map(season.games.map((game) => [game.gameId, new Set(game.windows.map((window) => window.key))]));
    const stays = new Set(season.placed.filter((read) => read.isFixed || !this.promises.has(read.promiseId)).map(placeOf));
    const known = new Set(season.placed.map((read) => read.promiseId));
    const listedPlaces = new Set(listed.map(placeOf));
    const strangers = season.placed.filter((read) => !this.promises.has(read.promiseId) && !listedPlaces.has(placeOf(read)));
    const unknown: PlanFault[] = [];
    for (const read of [...listed, ...strangers]) {
      const promise = this.promises.get(read.promiseId) ?? null;
      const where = { promiseId: read.promiseId, gameId: read.gameId, windowKey: read.windowKey };
      const laid: LaidRead = { ...read, promise, mustStay: stays.has(placeOf(read)) };
      if (promise === null && !known.has(read.promiseId)) unknown.push(this.fault('unknown-promise', [laid], where));
      const game = this.byGame.get(read.gameId);
      if (game === undefined) unknown.push(this.fault('unknown-game', [laid], where));
      else if (!windows.get(read.gameId)!.has(read.windowKey)) unknown.push(this.fault('unknown-window', [laid], where));
      else game.push(laid);
    }
    this.unknown = unknown;
    this.windows = season.games.flatMap((game) => {
      const reads = grouped(this.byGame.get(game.gameId)!, (read) => read.windowKey);
      return game.windows.flatMap((window) => (reads.has(window.key) ? [{ game, window, reads: reads.get(window.key)! }] : []));
    });
  }

  /** A wall where at least one of the reads that break it could go elsewhere. */
  fault(code: PlanFaultCode, reads: readonly LaidRead[], where: Omit<PlanFault, 'code' | 'severity'>): PlanFault {
    const isTold = reads.length > 0 && reads.every((read) => read.mustStay);
    return { code, severity: isTold ? 'wish' : PLAN_FAULTS[code], ...where };
  }
}
