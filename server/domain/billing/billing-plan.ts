import type { Day } from '../day.ts';
import type { Cents } from '../money.ts';
import { amountText, centsOf } from '../money.ts';
import { refuse } from '../refusals.ts';

/** Installments of a plan have shares, or all of them have amounts. */
export interface Installment {
  on: Day;
  /** a whole number; the share of all shares together. 0 where the installment has an amount */
  share: number;
  /** a fixed amount; what the amounts do not cover falls on the last one */
  amountCents?: Cents;
}

/** When what is agreed upon is billed. */
export type BillingPlan =
  | { kind: 'inFull'; on: Day }
  | { kind: 'installments'; installments: Installment[] }
  /** each played game that the contract covers is billed its even share of the price */
  | { kind: 'perGame' }
  /** `monthly`: only reads counted in months that are over */
  | { kind: 'perReadInArrears'; monthly?: true }
  | { kind: 'depositAndArrears'; depositCents: Cents; depositOn: Day };

/** Whether the installments of a plan are fixed amounts. */
export function hasAmounts(installments: readonly Installment[]): boolean {
  return installments.some((installment) => installment.amountCents !== undefined);
}

/** @throws Refused `installments-without-shares`, `installments-of-two-kinds` */
export function checkPlan(plan: BillingPlan): void {
  if (plan.kind !== 'installments') return;
  if (!hasAmounts(plan.installments)) {
    if (!plan.installments.some((installment) => installment.share > 0)) refuse('installments-without-shares');
    return;
  }
  if (plan.installments.some(({ share, amountCents }) => amountCents === undefined || share > 0)) refuse('installments-of-two-kinds');
}

/**
 * Refuses fixed amounts that come to more than the price; asked at signing. Amounts below it are let through, because
 * what they leave open falls on the last one.
 *
 * @throws Refused `installments-exceed-price`
 */
export function checkPlanCovers(plan: BillingPlan, priceCents: Cents): void {
  if (plan.kind !== 'installments' || !hasAmounts(plan.installments)) return;
  const sum = centsOf(plan.installments.reduce((all, { amountCents = 0 }) => all + amountCents, 0));
  if (sum > priceCents) refuse('installments-exceed-price', { sum: amountText(sum), price: amountText(priceCents) });
}
