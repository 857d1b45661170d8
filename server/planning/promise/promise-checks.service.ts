import { Inject, Injectable } from '@nestjs/common';
import { promiseAnswer } from '../../domain/planning/promise/promise-answer.ts';
import type { PromiseAnswer, Solved } from '../../domain/planning/promise/promise-answer.ts';
import { withoutPromises } from '../../domain/planning/promise/asking.ts';
import type { PlanSeason, SeasonPlan } from '../../domain/planning/season.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { PlanLine } from '../facts/plan-line.ts';
import { SeasonFacts } from '../facts/season-facts.service.ts';
import type { Facts } from '../facts/season-facts.service.ts';
import { PromiseSolving, SolvingTime } from './promise-solving.service.ts';
import type { PromiseCheckView } from './promise-check.dto.ts';
import { promiseCheckView } from './promise-view.ts';

/** How long the answer to "can we promise this?" may take. Common practice, no source. */
const SECONDS = 10;

/** What is asked, of which season, in whose words. */
export interface Asked {
  readonly seasonId: string;
  readonly lines: readonly PlanLine[];
  readonly leavingOutOfferId?: string;
  /** "this offer" */
  readonly deal: string;
  /** who is in the way of the deal, one sentence each */
  readonly obstacles: readonly string[];
}

/** What is asked with the season's facts as they were when they were read. */
export interface Prepared extends Asked {
  readonly facts: Facts;
  readonly kindNames: ReadonlyMap<string, string>;
}

export interface Checked {
  readonly view: PromiseCheckView;
  readonly answer: PromiseAnswer;
  readonly season: PlanSeason;
  /** the plan that is shown */
  readonly plan: SeasonPlan;
}

/** "Can we promise this?": reads the facts, closes the unit, solves, answers. */
@Injectable()
export class PromiseChecks {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(SeasonFacts) private readonly facts: SeasonFacts,
    @Inject(PromiseSolving) private readonly solving: PromiseSolving,
  ) {}

  /** Inside a unit of work. @throws Refused `unknown-season`, `unknown-read-kind`, `unknown-sponsor` */
  async prepare(asked: Asked): Promise<Prepared> {
    const scheduled = asked.lines.filter((line) => line.counting !== 'onOccurrence');
    const facts = await this.facts.load(asked.seasonId, { offers: 'open', adding: scheduled, ...(asked.leavingOutOfferId ? { leavingOutOfferId: asked.leavingOutOfferId } : {}) });
    const kinds = await this.work.sql<{ id: string; name: string }>('select id, name from read_kind where department_id = $1 and id = any($2::uuid[])', [
      [...new Set(asked.lines.map((line) => line.readKindId))],
    ]);
    return { ...asked, facts, kindNames: new Map(kinds.map((kind) => [kind.id, kind.name])) };
  }

  /** Outside a unit of work. @throws Refused `plan-cancelled`, `planning-busy`, `plan-took-too-long` */
  async answer(prepared: Prepared, signal?: AbortSignal): Promise<Checked> {
    const { season } = prepared.facts;
    const time = new SolvingTime(SECONDS, signal);
    const askedIds = new Set(prepared.lines.map((line) => line.id).filter((id) => season.promises.some((one) => one.promiseId === id)));
    const more = askedIds.size > 1 ? askedIds.size : 0;
    const solved = await this.solving.solved(season, askedIds, time, { company: true, more });
    const alone = await this.alone(season, solved, time);
    const answer = promiseAnswer(solved, alone, await this.inPlaces(solved, time));
    const plan = solved.beside ?? solved.after;
    const view = promiseCheckView({ ...prepared, season, answer, reads: plan.reads, forecasts: new Map() });
    return { view, answer, season, plan };
  }

  /** The plan in places alone, where not everything fits and company told no bottleneck. */
  private async inPlaces({ season, askedIds, after, beside }: Solved, time: SolvingTime): Promise<SeasonPlan | null> {
    const isShort = (beside ?? after).shortfall.some((one) => askedIds.has(one.promiseId));
    const isTold = [...after.bottlenecks, ...(beside?.bottlenecks ?? [])].some((one) => one.promiseIds.some((id) => askedIds.has(id)));
    return isShort && !isTold ? this.solving.plan(season, time, false, 1) : null;
  }

  /** Each of several lines as if it were asked alone, where not all of them fit together. */
  private async alone(season: PlanSeason, together: Solved, time: SolvingTime): Promise<Map<string, Solved>> {
    const alone = new Map<string, Solved>();
    const { askedIds } = together;
    if (askedIds.size < 2 || !(together.beside ?? together.after).shortfall.some((one) => askedIds.has(one.promiseId))) return alone;
    let more = askedIds.size;
    for (const id of askedIds) {
      more -= 1;
      const others = new Set([...askedIds].filter((other) => other !== id));
      alone.set(id, await this.solving.solved(withoutPromises(season, others), new Set([id]), time, { company: true, more }));
    }
    return alone;
  }
}
