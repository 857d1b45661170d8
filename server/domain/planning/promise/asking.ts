import type { PlanPromise, PlanSeason, SeasonPlan } from '../season.ts';
import { WEIGHT_OF_PRIORITY } from '../season.ts';

/** What is promised already goes first, in its own order as far as it matters; what is asked comes last. */
const RANK: Readonly<Record<1 | 2 | 3, 1 | 2>> = { 1: 1, 2: 1, 3: 2 };

/**
 * The season in which every earlier promise goes before what is asked. Reads that find a place together are the
 * independent sets of a gammoid, so a plan of least weighted shortfall serves as many of the earlier ones as any plan can, and
 * after them as many of the asked ones as then fit: what is asked and short is exactly what does not fit.
 *
 * @param askedIds ids of the promises that are asked about; the rest were promised before
 * @source the greedy property of matroids (Rado 1957, Edmonds 1971, from memory)
 */
export function withAskedLast(season: PlanSeason, askedIds: ReadonlySet<string>): PlanSeason {
  const promises = season.promises.map((one): PlanPromise => ({ ...one, priority: askedIds.has(one.promiseId) ? 3 : RANK[one.priority] }));
  return { ...season, promises };
}

/** The season without these promises; their reads that have a place are taken out with them. */
export function withoutPromises(season: PlanSeason, ids: ReadonlySet<string>): PlanSeason {
  return {
    ...season,
    promises: season.promises.filter((one) => !ids.has(one.promiseId)),
    placed: season.placed.filter((one) => !ids.has(one.promiseId)),
  };
}

/** Every read of a plan is kept where the plan has it: what is asked takes what is free beside it. */
export function keepingPlan(season: PlanSeason, plan: SeasonPlan): PlanSeason {
  return { ...season, placed: plan.reads.map((read) => ({ ...read, placementId: null, isFixed: true })) };
}

/** Reads asked for over the slots of a promise. */
export function readsAsked(promise: PlanPromise): number {
  return promise.slots.reduce((sum, slot) => sum + slot.reads, 0);
}

/** Reads without a place, of all promises or of those named. */
export function readsShort(plan: SeasonPlan, isOne: (promiseId: string) => boolean = () => true): number {
  return plan.shortfall.filter((one) => isOne(one.promiseId)).reduce((sum, one) => sum + one.reads, 0);
}

/** Shortfall of the promises that are not asked about, weighted as the plan weighs it. */
export function earlierShortfall(season: PlanSeason, plan: SeasonPlan, askedIds: ReadonlySet<string>): number {
  const weightOf = new Map(season.promises.map((one) => [one.promiseId, WEIGHT_OF_PRIORITY[one.priority]]));
  return plan.shortfall.filter((one) => !askedIds.has(one.promiseId)).reduce((sum, one) => sum + one.reads * (weightOf.get(one.promiseId) ?? 1), 0);
}
