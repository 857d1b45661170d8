export type { BillingPlan } from '../../server/domain/billing/billing-plan.ts';
export type {
  BenefitView as Benefit,
  CommitmentView as Commitment,
  ContractStanding,
  ContractView as Contract,
  TermView as Term,
} from '../../server/sponsorship/contract-view.ts';
