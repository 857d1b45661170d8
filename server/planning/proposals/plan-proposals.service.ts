import { Inject, Injectable } from '@nestjs/common';
import { refuse } from '../../domain/refusals.ts';
import { newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { AskPlanDto, PlanProposalView } from './plan-proposal.dto.ts';
import { PlanProposal } from './plan-proposal.entity.ts';
import type { ProposalState } from './plan-proposal.entity.ts';
import { PlanSolving } from './plan-solving.service.ts';
import { ProposalViews, standing } from './proposal-views.service.ts';
import { SeasonPlans } from './season-plans.service.ts';

const USUAL_SECONDS = 30;

/** Plans that are asked for, and what becomes of them before they are accepted. */
@Injectable()
export class PlanProposals {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(SeasonPlans) private readonly plans: SeasonPlans,
    @Inject(PlanSolving) private readonly solving: PlanSolving,
    @Inject(ProposalViews) private readonly views: ProposalViews,
  ) {}

  /** @throws Refused `unknown-season`, `unknown-game` */
  async ask(form: AskPlanDto): Promise<PlanProposalView> {
    const { seasonId, kind, because = null, gameId = null, seconds = USUAL_SECONDS, withSeconds = true } = form;
    const known = await this.work.sql('select 1 from season where department_id = $1 and id = $2', [seasonId]);
    if (known.length === 0) refuse('unknown-season');
    const id = form.id ?? newId();
    await this.work.insert(PlanProposal, {
      id, seasonId, kind, because, gameId, state: 'solving', options: { seconds, withSeconds }, askedByPersonId: this.work.personId, askedAt: new Date().toISOString(),
      baseVersion: await this.plans.version(seasonId),
    });
    const { scope } = this.work;
    this.work.afterCommit(() => this.solving.begin(id, scope));
    return this.views.one(id);
  }

  async cancel(id: string): Promise<PlanProposalView> {
    await this.leave(id, ['solving'], 'cancelled');
    this.work.afterCommit(() => this.solving.abort(id));
    return this.views.one(id);
  }

  async discard(id: string): Promise<PlanProposalView> {
    await this.leave(id, ['proposed', 'failed'], 'discarded');
    return this.views.one(id);
  }

  private async leave(id: string, from: readonly ProposalState[], to: ProposalState): Promise<void> {
    const { seasonId } = await this.work.one(PlanProposal, id);
    await this.plans.lock(seasonId);
    await this.work.lock(PlanProposal, [id]);
    const { state } = standing(await this.work.one(PlanProposal, id));
    if (!from.includes(state)) refuse('proposal-not-open', { state: STATE_IN_WORDS[state] });
    await this.work.update(PlanProposal, id, null, { state: to, decidedAt: new Date().toISOString(), decidedByPersonId: this.work.personId });
  }
}

export const STATE_IN_WORDS: Readonly<Record<ProposalState, string>> = {
  solving: 'still being worked out',
  proposed: 'waiting to be decided',
  failed: 'without a plan',
  cancelled: 'cancelled',
  accepted: 'accepted already',
  discarded: 'discarded already',
};
