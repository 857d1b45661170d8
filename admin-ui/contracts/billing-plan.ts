import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import type { BillingPlan } from './types.ts';

export const PLANS = [
  { id: 'inFull', name: 'In full, on one day' },
  { id: 'installments', name: 'In installments, by days and shares' },
  { id: 'perReadInArrears', name: 'After the fact, for the reads given' },
  { id: 'depositAndArrears', name: 'A deposit, then for the reads given' },
];

/** A billing plan in one sentence. */
export function planText(plan: BillingPlan): string {
  if (plan.kind === 'inFull') return `In full on ${dayText(plan.on)}`;
  if (plan.kind === 'installments') {
    const all = plan.installments.reduce((sum, one) => sum + one.share, 0);
    return plan.installments.map((one) => `${one.share} of ${all} shares on ${dayText(one.on)}`).join(', ');
  }
  if (plan.kind === 'depositAndArrears') return `Deposit of ${moneyText(plan.depositCents)} on ${dayText(plan.depositOn)}, then for the reads given`;
  return 'After the fact, for the reads given';
}
