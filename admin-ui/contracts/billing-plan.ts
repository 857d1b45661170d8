import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import type { BillingPlan } from './types.ts';

export const PLANS = [
  { id: 'inFull', name: 'In full, on one day' },
  { id: 'installments', name: 'In installments, by days and shares' },
  { id: 'amounts', name: 'In installments, by days and amounts' },
  { id: 'perGame', name: 'For each game played, its even share' },
  { id: 'perReadInArrears', name: 'After the fact, for the reads given' },
  { id: 'monthly', name: 'After each month, for the reads given in it' },
  { id: 'depositAndArrears', name: 'A deposit, then for the reads given' },
];

/** A billing plan in one sentence. */
export function planText(plan: BillingPlan): string {
  if (plan.kind === 'inFull') return `In full on ${dayText(plan.on)}`;
  if (plan.kind === 'installments') {
    if (plan.installments.some((one) => one.amountCents !== undefined)) {
      return `${plan.installments.map((one) => `${moneyText(one.amountCents)} on ${dayText(one.on)}`).join(', ')}; what these leave open of the price is billed with the last`;
    }
    const all = plan.installments.reduce((sum, one) => sum + one.share, 0);
    const days = plan.installments.map((one) => dayText(one.on));
    if (days.length > 1 && plan.installments.every((one) => one.share === plan.installments[0]!.share)) return `In ${days.length} equal parts on ${days.join(', ')}`;
    return plan.installments.map((one) => `${one.share} of ${all} shares on ${dayText(one.on)}`).join(', ');
  }
  if (plan.kind === 'depositAndArrears') return `Deposit of ${moneyText(plan.depositCents)} on ${dayText(plan.depositOn)}, then for the reads given`;
  if (plan.kind === 'perGame') return 'For each game played, its even share of the price';
  return plan.monthly ? 'After each month, for the reads given in it' : 'After the fact, for the reads given';
}

/** The choice of the form that stands for a plan: amounts and months are choices of their own there. */
export function choiceOf(plan: BillingPlan): string {
  if (plan.kind === 'installments' && (plan.installments ?? []).some((one) => one.amountCents !== undefined)) return 'amounts';
  return plan.kind === 'perReadInArrears' && plan.monthly ? 'monthly' : plan.kind;
}
