import type { Day } from '../day.ts';
import type { Cents } from '../money.ts';
import { refuse } from '../refusals.ts';

export interface Installment {
  on: Day;
  /** a whole number; the share of all shares together */
  share: number;
}

/** When what is agreed upon is billed. */
export type BillingPlan =
  | { kind: 'inFull'; on: Day }
  | { kind: 'installments'; installments: Installment[] }
  | { kind: 'perReadInArrears' }
  | { kind: 'depositAndArrears'; depositCents: Cents; depositOn: Day };

/** @throws Refused `installments-without-shares` */
export function checkPlan(plan: BillingPlan): void {
  if (plan.kind !== 'installments') return;
  if (!plan.installments.some((installment) => installment.share > 0)) refuse('installments-without-shares');
}
