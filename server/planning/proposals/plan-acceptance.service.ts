import { Inject, Injectable } from '@nestjs/common';
import { checkPlan } from '../../domain/planning/check-plan.ts';
import { newFaults } from '../../domain/planning/board/change.ts';
import { isOfCompany } from '../../domain/planning/plan-fault.ts';
import type { PlanFault } from '../../domain/planning/plan-fault.ts';
import type { PlanRead, PlanSeason } from '../../domain/planning/season.ts';
import { outlineOf } from '../../domain/planning/proposal/what-changed.ts';
import { faultInWords } from '../../domain/planning/words/fault.ts';
import { namesOf } from '../../domain/planning/words/names.ts';
import { refuse } from '../../domain/refusals.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { SeasonFacts } from '../facts/season-facts.service.ts';
import { PlanProposal } from './plan-proposal.entity.ts';
import { STATE_IN_WORDS } from './plan-proposals.service.ts';
import { PlanWriter } from './plan-writer.service.ts';
import type { BesideCompetitor } from './plan-writer.service.ts';
import { outOfDate, standing } from './proposal-views.service.ts';
import { SeasonPlans } from './season-plans.service.ts';

/** A proposal becomes the plan of its season: all of it or nothing, and only on the facts it was made from. */
@Injectable()
export class PlanAcceptance {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(SeasonPlans) private readonly plans: SeasonPlans,
    @Inject(SeasonFacts) private readonly facts: SeasonFacts,
    @Inject(PlanWriter) private readonly writer: PlanWriter,
  ) {}

  /**
   * @param version of the season's plan, as whoever accepts it saw it
   * @throws Refused `not-found`, `stale-version`, `proposal-not-open`, `plan-out-of-date`, `plan-breaks-a-wall`,
   *   `competitors-too-close` where competitors stand together and nobody says why
   */
  async accept(id: string, version: number, reason: string | null): Promise<void> {
    const { seasonId } = await this.work.one(PlanProposal, id);
    const current = await this.plans.lock(seasonId);
    if (current !== version) refuse('stale-version');
    await this.plans.holdTables(seasonId);
    await this.work.lock(PlanProposal, [id]);
    const proposal = await this.work.one(PlanProposal, id);
    const { state } = standing(proposal);
    if (state !== 'proposed' || proposal.result === null) refuse('proposal-not-open', { state: STATE_IN_WORDS[state] });
    const now = await this.facts.load(seasonId, { offers: 'open' });
    const what = outOfDate(proposal.options, now);
    if (what !== null) refuse('plan-out-of-date', { what });
    const beside = besideCompetitors(now.season, proposal.result.reads, reason);
    await this.plans.moveOn(seasonId);
    await this.writer.write(seasonId, now.season, proposal.result.reads, beside);
    const after = outlineOf((await this.facts.load(seasonId, { offers: 'open' })).season);
    await this.work.update(PlanProposal, id, null, { state: 'accepted', options: { ...proposal.options, outline: after }, decidedAt: new Date().toISOString(), decidedByPersonId: this.work.personId });
  }
}

/** Looks at the plan once more, by other code than that which made it. */
function besideCompetitors(season: PlanSeason, reads: readonly PlanRead[], reason: string | null): BesideCompetitor | null {
  const walls = newFaults(checkPlan(season, season.placed), checkPlan(season, reads)).filter((fault) => fault.severity === 'wall');
  const names = namesOf(season);
  const [hard] = walls.filter((fault) => !isOfCompany(fault));
  if (hard) refuse('plan-breaks-a-wall', { what: faultInWords(hard, names) });
  const company = walls.filter(isOfCompany);
  if (company.length === 0) return null;
  if (reason === null) refuse('competitors-too-close', { what: faultInWords(company[0]!, names) }, { reason: 'is missing' });
  return { reason, stands: (read) => company.some((fault) => isAt(fault, read)) };
}

function isAt(fault: PlanFault, read: PlanRead): boolean {
  if (fault.gameId !== read.gameId || (fault.promiseId !== read.promiseId && fault.other !== read.promiseId)) return false;
  return fault.windowKey === undefined || fault.windowKey === read.windowKey || fault.otherWindowKey === read.windowKey;
}
