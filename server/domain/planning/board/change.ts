import { checkPlan } from '../check-plan.ts';
import type { PlanFault } from '../plan-fault.ts';
import type { PlacedRead, PlanRead, PlanSeason } from '../season.ts';

/** What a person does to the plan on the board. Without a place the first free one is taken. */
export type BoardChange =
  | { readonly kind: 'move'; readonly placementId: string; readonly gameId: string; readonly windowKey: string; readonly place?: number | undefined }
  | { readonly kind: 'add'; readonly promiseId: string; readonly gameId: string; readonly windowKey: string; readonly place?: number | undefined }
  | { readonly kind: 'remove'; readonly placementId: string };

/** The plan once the changes are made. */
export interface ChangedPlan {
  readonly reads: readonly PlanRead[];
  /** where each change puts its read, by its index; null where it takes one out */
  readonly spots: readonly (PlanRead | null)[];
  /** the season whose plan that is: what a person moves does not have to stay, save on a locked night */
  readonly season: PlanSeason;
}

/** @throws RangeError for a placement the season does not have */
export function changePlan(season: PlanSeason, changes: readonly BoardChange[]): ChangedPlan {
  const byId = new Map(season.placed.flatMap((read) => (read.placementId === null ? [] : [[read.placementId, read] as const])));
  const moved = new Set(changes.flatMap((change) => (change.kind === 'add' ? [] : [change.placementId])));
  for (const id of moved) if (!byId.has(id)) throw new RangeError(`no read ${id} in this season`);
  const stands = season.placed.filter((read) => read.placementId === null || !moved.has(read.placementId));
  const taken = new Set(stands.map(spotOf));
  for (const change of changes) if (change.kind !== 'remove' && change.place !== undefined) taken.add(spotOf({ ...change, place: change.place }));
  const spots = changes.map((change): PlanRead | null => {
    if (change.kind === 'remove') return null;
    const promiseId = change.kind === 'add' ? change.promiseId : byId.get(change.placementId)!.promiseId;
    const where = { promiseId, gameId: change.gameId, windowKey: change.windowKey };
    if (change.place !== undefined) return { ...where, place: change.place };
    let place = 1;
    while (taken.has(spotOf({ ...where, place }))) place += 1;
    taken.add(spotOf({ ...where, place }));
    return { ...where, place };
  });
  const locked = new Set(season.games.filter((game) => game.isLocked).map((game) => game.gameId));
  const leaves = (read: PlacedRead): boolean => read.placementId !== null && moved.has(read.placementId);
  const placed = season.placed.filter((read) => !leaves(read) || locked.has(read.gameId)).map((read) => (leaves(read) ? { ...read, isFixed: false } : read));
  return { reads: [...stands, ...spots.filter((spot) => spot !== null)], spots, season: { ...season, placed } };
}

const spotOf = (read: { gameId: string; windowKey: string; place: number }): string => `${read.gameId} ${read.windowKey} ${read.place}`;

/** What changes break that was not broken as badly before, walls first. */
export function brokenBy(season: PlanSeason, changes: readonly BoardChange[]): PlanFault[] {
  const after = changePlan(season, changes);
  return newFaults(checkPlan(season, season.placed), checkPlan(after.season, after.reads));
}

/** Faults that were not there before, or are worse: more of them, or by more. */
export function newFaults(before: readonly PlanFault[], after: readonly PlanFault[]): PlanFault[] {
  const had = new Map<string, { count: number; has: number }>();
  for (const fault of before) {
    const known = had.get(keyOf(fault));
    had.set(keyOf(fault), { count: (known?.count ?? 0) + 1, has: Math.max(known?.has ?? 0, badnessOf(fault)) });
  }
  const seen = new Map<string, number>();
  const worse = after.filter((fault) => {
    const key = keyOf(fault);
    seen.set(key, (seen.get(key) ?? 0) + 1);
    const known = had.get(key);
    return known === undefined || seen.get(key)! > known.count || badnessOf(fault) > known.has;
  });
  return worse.toSorted((one, other) => Number(other.severity === 'wall') - Number(one.severity === 'wall'));
}

/** A floor is missed by what it lacks, everything else by what it has. */
const badnessOf = (fault: PlanFault): number => (fault.code === 'least-per-game-missed' ? fault.limit! - fault.has! : (fault.has ?? 0));

/** Of the whole window or game, whoever comes last; of one promise; or of two. */
function keyOf(fault: PlanFault): string {
  const { code, gameId, windowKey, group, promiseId, other, slot } = fault;
  if (code === 'window-full' || code === 'group-full' || code === 'seconds-exceeded') return [code, gameId, windowKey, group].join(' ');
  if (code === 'sponsors-per-game') return [code, gameId].join(' ');
  if (code === 'more-than-slot') return [code, promiseId, slot].join(' ');
  if (other !== undefined) return [code, gameId, ...[promiseId, other].sort(), ...[windowKey, fault.otherWindowKey ?? windowKey].sort()].join(' ');
  return [code, gameId, windowKey, promiseId].join(' ');
}

/**
 * The season as far as these games and promises show it: quick enough to ask about every window of every game. Reads that stand
 * on other games are taken off what their slots ask for.
 */
export function seasonAround(season: PlanSeason, gameIds: readonly string[], promiseIds: readonly string[]): PlanSeason {
  const here = new Set(gameIds);
  const placed = season.placed.filter((read) => here.has(read.gameId));
  const named = new Set([...promiseIds, ...placed.map((read) => read.promiseId)]);
  const elsewhere = season.placed.filter((read) => !here.has(read.gameId) && named.has(read.promiseId));
  const promises = season.promises.filter((promise) => named.has(promise.promiseId)).map((promise) => {
    const away = elsewhere.filter((read) => read.promiseId === promise.promiseId);
    return {
      ...promise,
      leastPerGame: 0,
      slots: promise.slots.map((slot) => ({
        reads: Math.max(0, slot.reads - away.filter((read) => slot.gameIds.includes(read.gameId)).length),
        gameIds: slot.gameIds.filter((gameId) => here.has(gameId)),
      })),
    };
  });
  return { games: season.games.filter((game) => here.has(game.gameId)), promises, placed };
}

/** Which of the changes a fault comes from: the one that stands there, or the last that touched the game. */
export function changeBehind(fault: PlanFault, spots: readonly (PlanRead | null)[]): number {
  const fits = (spot: PlanRead | null): number => {
    if (spot === null) return 0;
    const own = spot.promiseId === fault.promiseId || spot.promiseId === fault.other ? 1 : 0;
    const game = spot.gameId === fault.gameId ? 2 : 0;
    const window = game > 0 && (spot.windowKey === fault.windowKey || spot.windowKey === fault.otherWindowKey) ? 2 : 0;
    return own + game + window;
  };
  return spots.reduce((best, spot, index) => (fits(spot) >= fits(spots[best] ?? null) ? index : best), 0);
}
