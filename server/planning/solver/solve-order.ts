import type { PlanSeason, PlanWishes, SeasonPlan } from '../../domain/planning/season.ts';

/** What a solving worker is asked. */
export interface SolveOrder {
  readonly id: number;
  readonly season: PlanSeason;
  readonly wishes: PlanWishes;
  /** with seconds and company, not in places alone */
  readonly company: boolean;
  /** time to look for a better plan */
  readonly seconds: number;
}

/** What it answers: plans that could be used already, then the last one, or why there is none. */
export type SolveAnswer =
  | { readonly id: number; readonly kind: 'soFar'; readonly plan: SeasonPlan }
  | { readonly id: number; readonly kind: 'plan'; readonly plan: SeasonPlan }
  | { readonly id: number; readonly kind: 'failed'; readonly reason: string };
