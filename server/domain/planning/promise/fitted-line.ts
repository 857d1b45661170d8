import type { Day } from '../../day.ts';
import type { PlanGame, PlanPromise, SeasonPlan } from '../season.ts';
import { readsAsked, readsShort } from './asking.ts';

/** A line set down to what fits. */
export interface FittedLine {
  /** as the line counts: in all, or in each game or night; 0 where nothing fits */
  readonly reads: number;
  /** days that are taken out of the line because their games are full */
  readonly daysTakenOut: readonly Day[];
}

/**
 * What remains of a line by a plan in which it is short. A line over the whole term gets what has a place. A line that
 * counts game by game either asks for as many as every game can hold, or leaves out the days of the full games, whichever keeps
 * more reads; at the same number the days stay. Common practice, no source.
 *
 * @param promise undefined where the line has no game at all
 * @param reads as the line counts
 */
export function fittedLine(promise: PlanPromise | undefined, reads: number, isCountedByGame: boolean, plan: SeasonPlan, games: readonly PlanGame[]): FittedLine {
  if (promise === undefined) return { reads: 0, daysTakenOut: [] };
  const short = readsShort(plan, (id) => id === promise.promiseId);
  if (!isCountedByGame) return { reads: readsAsked(promise) - short, daysTakenOut: [] };
  if (short === 0) return { reads, daysTakenOut: [] };
  const dayOf = new Map(games.map((game) => [game.gameId, game.playedOn]));
  const missing = (slot: number): number => plan.shortfall.filter((one) => one.promiseId === promise.promiseId && one.slot === slot).reduce((sum, one) => sum + one.reads, 0);
  const slots = promise.slots.map((slot, index) => ({ has: slot.reads - missing(index), isShort: missing(index) > 0, days: slot.gameIds.flatMap((id) => dayOf.get(id) ?? []) }));
  const inEach = Math.max(0, Math.min(...slots.map((slot) => slot.has)));
  const daysTakenOut = [...new Set(slots.filter((slot) => slot.isShort).flatMap((slot) => slot.days))].toSorted();
  const kept = slots.filter((slot) => !slot.days.some((day) => daysTakenOut.includes(day))).length;
  if (inEach > 0 && inEach * slots.length >= reads * kept) return { reads: inEach, daysTakenOut: [] };
  return kept === 0 ? { reads: 0, daysTakenOut: [] } : { reads, daysTakenOut };
}
