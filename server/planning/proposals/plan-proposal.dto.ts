import type { ProposalResult } from '../../domain/planning/proposal/proposal-result.ts';
import { ChoiceField, CountField, FlagField, IdField, TextField } from '../../platform/http/fields.ts';
import { ListQuery } from '../../platform/http/lists.ts';
import type { ProposalState } from './plan-proposal.entity.ts';

export class AskPlanDto {
  @IdField({ optional: true }) id?: string;
  @IdField() seasonId: string;
  /** `plan` lays everything anew save what is fixed; `replan` keeps whatever is placed with the fewest moves */
  @ChoiceField(['plan', 'replan']) kind: 'plan' | 'replan';
  @TextField(1, 300, { optional: true, nullable: true }) because?: string | null;
  /** the game that moved or is not held */
  @IdField({ optional: true, nullable: true }) gameId?: string | null;
  /** how long it may take */
  @CountField(1, 120, { optional: true }) seconds?: number;
  /** with read lengths and competitors, not in places alone */
  @FlagField({ optional: true }) withSeconds?: boolean;
}

export class AcceptPlanDto {
  /** why competitors stand beside each other, where the plan could not keep them apart */
  @TextField(1, 500, { optional: true, nullable: true }) reason?: string | null;
}

export class PlanProposalListQuery extends ListQuery {
  @IdField({ optional: true }) seasonId?: string;
}

export interface PlanProposalLine {
  id: string;
  seasonId: string;
  seasonName: string;
  kind: 'plan' | 'replan';
  because: string | null;
  state: ProposalState;
  askedAt: string;
  askedByName: string | null;
  decidedAt: string | null;
  decidedByName: string | null;
  /** null until it is solved */
  headline: string | null;
  /** why there is no plan */
  failure: string | null;
}

export interface PlanProposalView extends PlanProposalLine {
  gameId: string | null;
  /** "Herons at Kestrels" */
  gameLabel: string | null;
  seconds: number;
  withSeconds: boolean;
  solvedAt: string | null;
  result: ProposalResult | null;
  /** what changed since, where it cannot be accepted any more */
  outOfDateBecause: string | null;
  /** of the season's plan: it is accepted with this one */
  version: number;
}
