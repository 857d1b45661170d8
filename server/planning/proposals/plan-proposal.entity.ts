import { Entity } from 'typeorm';
import type { ProposalResult } from '../../domain/planning/proposal/proposal-result.ts';
import { CountColumn, DepartmentColumn, IdColumn, InstantColumn, JsonColumn, RefColumn, TextColumn, VersionColumn } from '../../platform/database/columns.ts';
import type { FactsOutline } from '../../domain/planning/proposal/what-changed.ts';

export type ProposalState = 'solving' | 'proposed' | 'failed' | 'cancelled' | 'accepted' | 'discarded';

export interface ProposalOptions {
  /** seconds it may take */
  seconds: number;
  /** with read lengths and company, not in places alone */
  withSeconds: boolean;
  /** of the facts it is worked out from; absent while nobody has looked at them */
  digest?: string;
  outline?: FactsOutline;
}

/** A plan that is being worked out or waits to be accepted. */
@Entity('plan_proposal')
export class PlanProposal {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() seasonId: string;
  @TextColumn() kind: 'plan' | 'replan';
  @TextColumn({ nullable: true }) because: string | null;
  @RefColumn({ nullable: true }) gameId: string | null;
  @CountColumn() baseVersion: number;
  @TextColumn() state: ProposalState;
  @JsonColumn() options: ProposalOptions;
  @JsonColumn({ nullable: true }) result: ProposalResult | null;
  @TextColumn({ nullable: true }) failure: string | null;
  @RefColumn({ nullable: true }) askedByPersonId: string | null;
  @InstantColumn() askedAt: string;
  @InstantColumn({ nullable: true }) solvedAt: string | null;
  @InstantColumn({ nullable: true }) decidedAt: string | null;
  @RefColumn({ nullable: true }) decidedByPersonId: string | null;
  @VersionColumn() version: number;
}
