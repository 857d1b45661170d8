export type { PlanProposalLine, PlanProposalView as PlanProposal } from '../../server/planning/proposals/plan-proposal.dto.ts';
export type { SeasonPlanView as SeasonPlan } from '../../server/planning/proposals/season-plan.dto.ts';
export type { GameBeforeAfter, NamedSpot, ProposalResult, ProposedMove, ReadsMissing, SponsorBeforeAfter } from '../../server/domain/planning/proposal/proposal-result.ts';
export type { PromiseStanding } from '../../server/domain/planning/proposal/where-it-stands.ts';
