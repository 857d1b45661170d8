import { Inject, Injectable } from '@nestjs/common';
import { keepingPlan, readsShort, withAskedLast, withoutPromises } from '../../domain/planning/promise/asking.ts';
import { takesFromEarlier } from '../../domain/planning/promise/promise-answer.ts';
import type { Solved } from '../../domain/planning/promise/promise-answer.ts';
import type { PlanSeason, SeasonPlan } from '../../domain/planning/season.ts';
import { PlanSolver } from '../solver/plan-solver.service.ts';

/** How long somebody waits for an answer; each solve gets its share of what is left. */
export class SolvingTime {
  private readonly endsAtMilliseconds: number;

  constructor(seconds: number, readonly signal?: AbortSignal) {
    this.endsAtMilliseconds = performance.now() + seconds * 1000;
  }

  get isUp(): boolean {
    return performance.now() >= this.endsAtMilliseconds;
  }

  /** At least a tenth of a second, so that the flow always has its turn. */
  share(ofSolves: number): number {
    return Math.max(0.1, (this.endsAtMilliseconds - performance.now()) / 1000 / ofSolves);
  }
}

export interface HowToSolve {
  /** with seconds and company, not in places alone */
  readonly company: boolean;
  /** solves that are still to come in this time */
  readonly more?: number;
  /** the season without what is asked, where it is solved already */
  readonly before?: SeasonPlan;
}

const WISHES = { keeps: 'nothing' } as const;

/** Solves a season with and without what is asked, in the solver's thread. Outside a unit of work. */
@Injectable()
export class PromiseSolving {
  constructor(@Inject(PlanSolver) private readonly solver: PlanSolver) {}

  /**
   * The season with the asked promises last; and without them, where earlier promises are short. Where the asked
   * ones would take from earlier ones all the same, they are also solved beside the plan without them.
   *
   * @throws Refused `plan-cancelled`, `planning-busy`, `plan-took-too-long`
   */
  async solved(season: PlanSeason, askedIds: ReadonlySet<string>, time: SolvingTime, how: HowToSolve): Promise<Solved> {
    const { company, more = 0 } = how;
    const ranked = withAskedLast(season, askedIds);
    const after = await this.plan(ranked, time, company, 3 + more);
    if (readsShort(after, (id) => !askedIds.has(id)) === 0) return { season: ranked, askedIds, before: after, after, beside: null };
    const before = how.before ?? (await this.plan(withoutPromises(ranked, askedIds), time, company, 2 + more));
    if (!takesFromEarlier({ season: ranked, askedIds, before, after })) return { season: ranked, askedIds, before, after, beside: null };
    return { season: ranked, askedIds, before, after, beside: await this.plan(keepingPlan(ranked, before), time, company, 1 + more) };
  }

  async plan(season: PlanSeason, time: SolvingTime, company: boolean, ofSolves: number): Promise<SeasonPlan> {
    return this.solver.solve(season, WISHES, { seconds: time.share(ofSolves), company, ...(time.signal ? { signal: time.signal } : {}) });
  }
}
