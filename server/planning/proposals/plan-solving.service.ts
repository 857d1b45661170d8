import { Inject, Injectable } from '@nestjs/common';
import type { OnModuleDestroy } from '@nestjs/common';
import { outlineOf } from '../../domain/planning/proposal/what-changed.ts';
import { resultOf } from '../../domain/planning/proposal/make-result.ts';
import { REFUSALS, Refused } from '../../domain/refusals.ts';
import type { Scope } from '../../platform/database/scope.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { SeasonFacts } from '../facts/season-facts.service.ts';
import { PlanSolver } from '../solver/plan-solver.service.ts';
import { PlanProposal } from './plan-proposal.entity.ts';

/** Works out what was asked for, outside any unit of work: read, close, solve, open, store. */
@Injectable()
export class PlanSolving implements OnModuleDestroy {
  private readonly running = new Map<string, { controller: AbortController; done: Promise<void> }>();

  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(SeasonFacts) private readonly facts: SeasonFacts,
    @Inject(PlanSolver) private readonly solver: PlanSolver,
  ) {}

  begin(id: string, scope: Scope): void {
    const controller = new AbortController();
    const done = this.solve(id, scope, controller.signal).finally(() => this.running.delete(id));
    this.running.set(id, { controller, done });
  }

  /** Whoever asked does not wait for it any more. */
  abort(id: string): void {
    this.running.get(id)?.controller.abort();
  }

  /** The server stops: what was not finished is told as failed, not as still running. */
  async onModuleDestroy(): Promise<void> {
    for (const { controller } of this.running.values()) controller.abort();
    await Promise.all([...this.running.values()].map(({ done }) => done));
  }

  private async solve(id: string, scope: Scope, signal: AbortSignal): Promise<void> {
    try {
      const { proposal, season, digest, version } = await this.work.runAs(scope, async () => {
        const asked = await this.work.one(PlanProposal, id);
        return { proposal: asked, ...(await this.facts.load(asked.seasonId, { offers: 'open' })) };
      });
      const { kind, because, options } = proposal;
      const wishes = { keeps: kind === 'replan' ? ('whatIsPlaced' as const) : ('nothing' as const) };
      const plan = await this.solver.solve(season, wishes, { seconds: options.seconds, signal, company: options.withSeconds });
      const result = resultOf(season, plan, because);
      await this.store(id, scope, { state: 'proposed', result, baseVersion: version, options: { ...options, digest, outline: outlineOf(season) } });
    } catch (failure) {
      await this.store(id, scope, { state: 'failed', failure: sentenceOf(failure) }).catch(() => undefined);
    }
  }

  /** A proposal that was cancelled meanwhile stays so. */
  private async store(id: string, scope: Scope, changes: Partial<PlanProposal>): Promise<void> {
    await this.work.runAs(scope, async () => {
      await this.work.lock(PlanProposal, [id]);
      const now = await this.work.first(PlanProposal, { id });
      if (now?.state === 'solving') await this.work.update(PlanProposal, id, null, { ...changes, solvedAt: new Date().toISOString() });
    });
  }
}

function sentenceOf(failure: unknown): string {
  if (failure instanceof Refused) return failure.code === 'plan-cancelled' ? 'The server stopped while this plan was worked out. Ask for it again.' : REFUSALS[failure.code].sentence;
  return 'Working out this plan went wrong on our side, and nothing was changed. Ask for it again.';
}
