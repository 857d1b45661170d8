import type { Cents } from '../money.ts';
import { addCents, centsOf, shareOfCents, splitByLargestRemainder } from '../money.ts';
import { movedMoneyDay } from '../sponsorship/rollover/moved-days.ts';
import type { SeasonMove } from '../sponsorship/rollover/moved-days.ts';
import { hasAmounts } from './billing-plan.ts';
import type { BillingPlan } from './billing-plan.ts';

/**
 * When the next year is billed: the same plan with its days moved along. Fixed amounts go up as the price does; where they came
 * to the price of the year before, they come to the price of this one, by largest remainder.
 */
export function movedBillingPlan(plan: BillingPlan, move: SeasonMove, prices: { beforeCents: Cents; nextCents: Cents; increaseBasisPoints: number }): BillingPlan {
  const raised = (amount: Cents) => addCents(amount, shareOfCents(amount, prices.increaseBasisPoints));
  if (plan.kind === 'inFull') return { ...plan, on: movedMoneyDay(plan.on, move) };
  if (plan.kind === 'depositAndArrears') return { ...plan, depositCents: raised(plan.depositCents), depositOn: movedMoneyDay(plan.depositOn, move) };
  if (plan.kind !== 'installments') return plan;
  const moved = plan.installments.map((one) => ({ ...one, on: movedMoneyDay(one.on, move) }));
  if (!hasAmounts(moved)) return { ...plan, installments: moved };
  const amounts = moved.map((one) => one.amountCents ?? centsOf(0));
  const sum = centsOf(amounts.reduce((all, one) => all + one, 0));
  const next = splitByLargestRemainder(sum === prices.beforeCents ? prices.nextCents : raised(sum), amounts);
  return { ...plan, installments: moved.map((one, place) => ({ ...one, amountCents: next[place]! })) };
}
