import { Inject, Injectable } from '@nestjs/common';
import type { PlanSeason, SeasonPlan } from '../domain/planning/season.ts';
import { refuse } from '../domain/refusals.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { SeasonFacts } from './facts/season-facts.service.ts';
import type { SpreadView } from './placement.dto.ts';
import { PlanWriter } from './proposals/plan-writer.service.ts';
import { SeasonPlans } from './proposals/season-plans.service.ts';
import { PlanSolver } from './solver/plan-solver.service.ts';

const TRIES = 4;
const SECONDS = 30;

/** Gives every read still owed a place on the coming nights; what has a place keeps it where it can. */
@Injectable()
export class SpreadService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(SeasonFacts) private readonly facts: SeasonFacts,
    @Inject(PlanSolver) private readonly solver: PlanSolver,
    @Inject(SeasonPlans) private readonly plans: SeasonPlans,
    @Inject(PlanWriter) private readonly writer: PlanWriter,
  ) {}

  /**
   * Outside a unit of work: read, close, plan, open, store.
   *
   * @throws Refused `unknown-season`, and `busy` when the season changes faster than it is planned
   */
  async spread(seasonId: string): Promise<SpreadView> {
    for (let attempt = 1; attempt <= TRIES; attempt += 1) {
      const { season, digest } = await this.work.run(() => this.facts.load(seasonId, { offers: 'open' }));
      const plan = await this.solver.solve(season, { keeps: 'whatIsPlaced' }, { seconds: SECONDS, company: false });
      const placed = await this.work.run(async () => {
        await this.plans.lock(seasonId);
        await this.plans.holdTables(seasonId);
        const now = await this.facts.load(seasonId, { offers: 'open' });
        if (now.digest !== digest) return null;
        await this.plans.moveOn(seasonId);
        return this.writer.write(seasonId, now.season, plan.reads);
      });
      if (placed !== null) return { placed, left: leftOf(season, plan) };
    }
    return refuse('busy');
  }
}

function leftOf(season: PlanSeason, plan: SeasonPlan): SpreadView['left'] {
  return season.promises.flatMap(({ promiseId, source, sponsorName, readKindName }) => {
    const notPlaced = plan.shortfall.filter((one) => one.promiseId === promiseId).reduce((sum, one) => sum + one.reads, 0);
    return notPlaced === 0 || source === 'offer' ? [] : [{ commitmentId: promiseId, sponsorName, readKindName, notPlaced }];
  });
}
