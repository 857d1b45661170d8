import { checkPlan } from '../check-plan.ts';
import type { PlanFault } from '../check-plan.ts';
import { isBeyondPlaces } from '../plan-fault.ts';
import type { PlanRead, PlanSeason } from '../season.ts';

/**
 * What is wrong with a plan beside what reads that stay break by themselves, as the separate check counts it: walls, and
 * seconds, which a plan never exceeds although a person may.
 */
export function faultsOfPlan(season: PlanSeason, reads: readonly PlanRead[]): PlanFault[] {
  const told = checkPlan(season, reads).filter((fault) => fault.severity === 'wall' || fault.code === 'seconds-exceeded');
  if (told.length === 0) return [];
  const overSeconds = new Map(checkPlan(season, stayingReads(season)).flatMap((fault) => (fault.code === 'seconds-exceeded' ? [[whereOf(fault), fault.has ?? 0]] : [])));
  return told.filter((fault) => fault.code !== 'seconds-exceeded' || (fault.has ?? 0) > (overSeconds.get(whereOf(fault)) ?? 0));
}

/** A plan in places also keeps the seconds and the company. */
export const keepsCompany = (season: PlanSeason, reads: readonly PlanRead[]): boolean => !faultsOfPlan(season, reads).some(isBeyondPlaces);

const whereOf = (fault: PlanFault): string => `${fault.gameId} ${fault.windowKey}`;
const keyOf = (read: PlanRead): string => `${read.promiseId} ${read.gameId} ${read.windowKey} ${read.place}`;

function stayingReads(season: PlanSeason): PlanRead[] {
  const locked = new Set(season.games.filter((game) => game.isLocked).map((game) => game.gameId));
  return season.placed.filter((read) => read.isFixed || locked.has(read.gameId));
}

/**
 * The plan without the reads that break something, what matters least first. A last resort: what makes plans keeps to the
 * same limits by itself.
 */
export function withoutFaults(season: PlanSeason, reads: readonly PlanRead[]): readonly PlanRead[] {
  const stays = new Set(stayingReads(season).map(keyOf));
  const priority = new Map(season.promises.map((promise) => [promise.promiseId, promise.priority]));
  let kept = reads;
  for (;;) {
    const [fault] = faultsOfPlan(season, kept);
    if (fault === undefined) return kept;
    const among = (isNear: (read: PlanRead) => boolean): PlanRead[] => kept.filter((read) => !stays.has(keyOf(read)) && isNear(read));
    const inGame = among((read) => read.gameId === fault.gameId);
    const inWindow = inGame.filter((read) => read.windowKey === fault.windowKey || read.windowKey === fault.otherWindowKey);
    const named = (inWindow.length > 0 ? inWindow : inGame).filter((read) => read.promiseId === fault.promiseId || read.promiseId === fault.other);
    const [worst] = [named, inWindow, inGame, among(() => true)].find((group) => group.length > 0) ?? [];
    if (worst === undefined) return kept;
    const least = [named, inWindow, inGame].find((group) => group.length > 0)?.toSorted((one, other) => (priority.get(other.promiseId) ?? 4) - (priority.get(one.promiseId) ?? 4))[0] ?? worst;
    kept = kept.filter((read) => read !== least);
  }
}
