import { checkPlan } from '../domain/billing/billing-plan.ts';
import type { BillingPlan, Installment } from '../domain/billing/billing-plan.ts';
import type { Day } from '../domain/day.ts';
import { centsOf } from '../domain/money.ts';
import { refuse } from '../domain/refusals.ts';
import { CentsField, ChoiceField, CountField, DayField, FlagField, ListOf } from '../platform/http/fields.ts';
import { MOST_CENTS } from './amounts.ts';

const OPEN = { optional: true, nullable: true };

export class InstallmentDto {
  @DayField() on: string;
  @CountField(0, 1_000_000, OPEN) share?: number | null;
  /** a fixed amount instead of a share, in all installments */
  @CentsField({ least: 1, most: MOST_CENTS }, OPEN) amountCents?: number | null;
}

export class BillingPlanDto {
  @ChoiceField(['inFull', 'installments', 'perGame', 'perReadInArrears', 'depositAndArrears']) kind: BillingPlan['kind'];
  @DayField(OPEN) on?: string | null;
  @ListOf(() => InstallmentDto, { most: 60 }, OPEN) installments?: InstallmentDto[] | null;
  @CentsField({ most: MOST_CENTS }, OPEN) depositCents?: number | null;
  @DayField(OPEN) depositOn?: string | null;
  /** per read: only reads of months that are over */
  @FlagField(OPEN) monthly?: boolean | null;
}

/**
 * The plan with only what belongs to its kind.
 *
 * @throws Refused `malformed` where something of the kind is missing, `installments-without-shares`, `installments-of-two-kinds`
 */
export function planOf(form: BillingPlanDto): BillingPlan {
  const plan = planOfKind(form);
  checkPlan(plan);
  return plan;
}

function planOfKind(form: BillingPlanDto): BillingPlan {
  switch (form.kind) {
    case 'inFull':
      return { kind: 'inFull', on: present(form.on, 'on') as Day };
    case 'installments':
      return { kind: 'installments', installments: present(form.installments, 'installments').map(installmentOf) };
    case 'perGame':
      return { kind: 'perGame' };
    case 'depositAndArrears':
      return { kind: 'depositAndArrears', depositCents: centsOf(present(form.depositCents, 'depositCents')), depositOn: present(form.depositOn, 'depositOn') as Day };
    case 'perReadInArrears':
      return { kind: 'perReadInArrears', ...(form.monthly ? { monthly: true } : {}) };
  }
}

function installmentOf({ on, share, amountCents }: InstallmentDto): Installment {
  return { on: on as Day, share: share ?? 0, ...(amountCents ? { amountCents: centsOf(amountCents) } : {}) };
}

function present<T>(value: T | null | undefined, field: string): T {
  return value ?? refuse('malformed', {}, { term: { billingPlan: { [field]: 'is missing' } } });
}
