import type { RaRecord } from 'react-admin';
import { only } from '../../api/changes.ts';
import { exclusivitiesOf } from '../../company/exclusivity-values.ts';
import { choiceOf } from '../billing-plan.ts';
import type { Benefit, BillingPlan, Commitment, Contract } from '../types.ts';

const COMMITMENT = [
  'id', 'readKindId', 'counting', 'reads', 'readsAtLeast', 'readsAtMost', 'whose', 'severalCountAsOne', 'rateCents', 'priceEachCents', 'isTaxed', 'startsOn', 'endsOn',
  'teamIds', 'levels', 'leastPerGame', 'mostPerGame', 'separation', 'windowKinds', 'blackoutDays', 'pinnedGameIds', 'priority',
] as const;
const BENEFIT = ['id', 'name', 'quantity', 'rateCents', 'fairValueCents', 'isTaxed', 'earns', 'startsOn', 'endsOn', 'dueOn'] as const;
const TERM = ['seasonId', 'startsOn', 'endsOn', 'pricing', 'priceCents', 'billAtLeastCents', 'billAtMostCents'] as const;

/** Only what belongs to the chosen plan, so that a change of mind leaves nothing behind. */
function planOf(plan: Omit<Partial<BillingPlan>, 'kind'> & { kind?: string }): Record<string, unknown> {
  if (plan.kind === 'inFull') return only(plan, 'kind', 'on');
  const { installments = [] } = plan as { installments?: { on?: string; share?: number; amountCents?: number }[] };
  if (plan.kind === 'installments') return { kind: 'installments', installments: installments.map((one) => only(one, 'on', 'share')) };
  if (plan.kind === 'amounts') return { kind: 'installments', installments: installments.map((one) => only(one, 'on', 'amountCents')) };
  if (plan.kind === 'perGame') return { kind: 'perGame' };
  if (plan.kind === 'monthly') return { kind: 'perReadInArrears', monthly: true };
  if (plan.kind === 'depositAndArrears') return only(plan, 'kind', 'depositCents', 'depositOn');
  return { kind: 'perReadInArrears' };
}

function commitmentOf(commitment: Commitment): Record<string, unknown> {
  const sent = only(commitment, ...COMMITMENT);
  if (commitment.counting === 'onOccurrence') return { ...sent, reads: 0 };
  return { ...sent, readsAtLeast: undefined, readsAtMost: undefined };
}

/** What the contract form sends; figures the server worked out stay behind. */
export function contractFromForm(values: RaRecord): Record<string, unknown> {
  const term = (values['term'] ?? {}) as Record<string, unknown>;
  const price = term['pricing'] === 'perRead' ? { priceCents: 0 } : {};
  return {
    ...values,
    term: { ...only(term, ...TERM), ...price, billingPlan: values['isInKind'] === true ? { kind: 'inFull', on: term['startsOn'] } : planOf((term['billingPlan'] ?? {}) as BillingPlan) },
    commitments: ((values['commitments'] ?? []) as Commitment[]).map(commitmentOf),
    exclusivities: exclusivitiesOf(values),
    benefits: ((values['benefits'] ?? []) as Benefit[]).map((benefit) => only(benefit, ...BENEFIT)),
  };
}

/** A stored plan of amounts, or of whole months, is a choice of its own in the form. */
export function contractIntoForm(contract: Contract): object {
  const { term } = contract;
  return { ...contract, term: { ...term, billingPlan: { ...term.billingPlan, kind: choiceOf(term.billingPlan) } } };
}
