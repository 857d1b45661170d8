import type { BillingPlan } from '../../domain/billing/billing-plan.ts';
import { centsOf, splitByLargestRemainder } from '../../domain/money.ts';

/** When the price of the first year is put on invoices, in one sentence. */
export function billingPlanWords(plan: BillingPlan, priceCents: number, day: (on: string) => string, amount: (cents: number) => string): string {
  switch (plan.kind) {
    case 'inFull':
      return `Billed in full on ${day(plan.on)}.`;
    case 'installments':
      return `Billed ${installmentsOf(plan, priceCents).map(([on, cents]) => `${amount(cents)} on ${day(on)}`).join(', ')}.`;
    case 'perGame':
      return 'Billed game by game, once each was played.';
    case 'depositAndArrears':
      return `Billed with a deposit of ${amount(plan.depositCents)} on ${day(plan.depositOn)}, then for the reads given.`;
    case 'perReadInArrears':
      return plan.monthly ? 'Billed after each month, for the reads given in it.' : 'Billed after the fact, for the reads given.';
  }
}

/** What fixed amounts leave open of the price is billed with the last one. */
function installmentsOf({ installments }: BillingPlan & { kind: 'installments' }, priceCents: number): [on: string, cents: number][] {
  if (installments.some((one) => one.amountCents !== undefined)) {
    const rest = priceCents - installments.reduce((all, one) => all + (one.amountCents ?? 0), 0);
    return installments.map((one, place) => [one.on, (one.amountCents ?? 0) + (place === installments.length - 1 ? rest : 0)]);
  }
  const parts = splitByLargestRemainder(centsOf(priceCents), installments.map((one) => one.share));
  return installments.map((one, place) => [one.on, parts[place]!]);
}
