import { companyFaults } from './check-company.ts';
import { lockFaults, windowFaults } from './check-windows.ts';
import { gameFaults, slotFaults } from './check-promises.ts';
import { LaidPlan } from './laid-plan.ts';
import type { PlanFault } from './plan-fault.ts';
import type { PlanRead, PlanSeason } from './season.ts';

export type { PlanFault } from './plan-fault.ts';

/**
 * Everything a plan breaks, counted in whole numbers and by nothing that made the plan: places, groups, kinds, slots, limits of
 * a game, reads that stay, locked nights, seconds and competitors. An empty answer is a plan that holds; reads that find no
 * place are no fault.
 *
 * @param reads the whole plan, those that stay where they are included; placed reads of promises the season does not name
 *   take their places whether or not they are listed
 */
export function checkPlan(season: PlanSeason, reads: readonly PlanRead[]): PlanFault[] {
  const plan = new LaidPlan(season, reads);
  return [...plan.unknown, ...windowFaults(plan), ...slotFaults(plan), ...gameFaults(plan), ...lockFaults(plan), ...companyFaults(plan)];
}
