import type { BillingPlan } from '../../domain/billing/billing-plan.ts';
import type { Day } from '../../domain/day.ts';
import { PARTIES_COLUMNS, PARTIES_FROM } from './invoice-snapshot.ts';
import type { Parties } from './invoice-snapshot.ts';

/** A contract as far as its bill goes: its parties, its present term and whether it is on hold. */
export interface Deal extends Parties {
  contractId: string;
  isInKind: boolean;
  termId: string;
  termState: 'draft' | 'signed' | 'ended' | 'closed';
  billingPlan: BillingPlan;
  seasonId: string;
  termStartsOn: Day;
  termEndsOn: Day;
  heldOn: Day | null;
  holdReason: string | null;
}

/** `$2` are the contracts; the last term of each stands for it. */
export const DEALS = `select ${PARTIES_COLUMNS}, contract.id as "contractId", contract.is_in_kind as "isInKind", term.id as "termId", term.state as "termState",
    term.billing_plan as "billingPlan", term.season_id as "seasonId", term.starts_on as "termStartsOn", term.ends_on as "termEndsOn",
    hold.held_on as "heldOn", hold.reason as "holdReason"
  ${PARTIES_FROM}
    join term on term.department_id = contract.department_id and term.contract_id = contract.id
      and term.number = (select max(latest.number) from term as latest where latest.department_id = $1 and latest.contract_id = contract.id)
    left join lateral (select held_on, reason from contract_hold
      where contract_hold.department_id = $1 and contract_hold.contract_id = contract.id and contract_hold.lifts_hold_id is null
        and not exists (select 1 from contract_hold as lift where lift.department_id = $1 and lift.lifts_hold_id = contract_hold.id)
      order by contract_hold.recorded_at desc limit 1) as hold on true
  where contract.department_id = $1 and contract.id = any($2::uuid[]) order by contract.id`;
