import { Refused } from '../../domain/refusals.ts';
import type { PlanSeason, PlanWishes, SeasonPlan } from '../../domain/planning/season.ts';
import type { SolveOrder } from './solve-order.ts';
import { SolvingThread } from './solving-thread.ts';
import type { ThreadOptions } from './solving-thread.ts';

export interface SolveLimits {
  /** time to look for a better plan; what is known by then is the answer */
  readonly seconds: number;
  /** with seconds and company, not in places alone */
  readonly company: boolean;
  readonly signal?: AbortSignal;
}

export interface SolverOptions extends ThreadOptions {
  readonly threads?: number;
  readonly mostWaiting?: number;
  /** after its seconds a solve may take so long to end by itself */
  readonly graceSeconds?: number;
}

interface Waiting {
  readonly order: SolveOrder;
  readonly signal: AbortSignal | undefined;
  readonly resolve: (plan: SeasonPlan) => void;
  readonly reject: (failure: Error) => void;
}

/** HiGHS looks at its clock between steps, and one step may be long. */
const GRACE_SECONDS = 3;

/**
 * Works out plans in threads of their own, so that the server answers others meanwhile. One plan at a time in a thread,
 * a short queue before them. Whatever happens to a thread costs that thread only; the next plan gets a fresh one.
 */
export class PlanSolver {
  private readonly queue: Waiting[] = [];
  private readonly threads: readonly SolvingThread[];
  private lastId = 0;
  private isClosed = false;

  constructor(private readonly options: SolverOptions = {}) {
    this.threads = Array.from({ length: options.threads ?? 2 }, () => new SolvingThread(options));
  }

  /**
   * The best plan that is found within the seconds, with its bound.
   *
   * @throws Refused `planning-busy` when too many plans wait, `plan-cancelled` when the signal says so or the server
   *   closes, `plan-took-too-long` when the time was up before there was any plan
   * @throws SolvingFailed when the worker failed before there was any plan
   */
  solve(season: PlanSeason, wishes: PlanWishes, limits: SolveLimits): Promise<SeasonPlan> {
    const { signal } = limits;
    if (this.isClosed || signal?.aborted === true) return Promise.reject(new Refused('plan-cancelled'));
    if (this.queue.length >= (this.options.mostWaiting ?? 8)) return Promise.reject(new Refused('planning-busy'));
    return new Promise((resolve, reject) => {
      this.lastId += 1;
      const waiting: Waiting = { order: { id: this.lastId, season, wishes, company: limits.company, seconds: limits.seconds }, signal, resolve, reject };
      signal?.addEventListener('abort', () => this.leave(waiting), { once: true });
      this.queue.push(waiting);
      this.next();
    });
  }

  /** Ends the threads; plans that are waited for are cancelled. */
  async close(): Promise<void> {
    this.isClosed = true;
    for (const one of this.queue.splice(0)) one.reject(new Refused('plan-cancelled'));
    await Promise.all(this.threads.map((thread) => thread.end()));
  }

  async onModuleDestroy(): Promise<void> {
    await this.close();
  }

  private leave(waiting: Waiting): void {
    const place = this.queue.indexOf(waiting);
    if (place === -1) return;
    this.queue.splice(place, 1);
    waiting.reject(new Refused('plan-cancelled'));
  }

  private next(): void {
    const thread = this.threads.find((one) => one.isIdle);
    if (thread === undefined) return;
    const waiting = this.queue.shift();
    if (waiting === undefined) return;
    this.run(thread, waiting).then(waiting.resolve, waiting.reject).finally(() => this.next());
  }

  private async run(thread: SolvingThread, { order, signal }: Waiting): Promise<SeasonPlan> {
    let soFar: SeasonPlan | null = null;
    let isLate = false;
    const cancel = (): void => void thread.end();
    const timer = setTimeout(() => {
      isLate = true;
      void thread.end();
    }, (order.seconds + (this.options.graceSeconds ?? GRACE_SECONDS)) * 1000);
    signal?.addEventListener('abort', cancel, { once: true });
    try {
      return await thread.ask(order, (plan) => {
        soFar = plan;
      });
    } catch (failure) {
      if (this.isClosed || signal?.aborted === true) throw new Refused('plan-cancelled');
      if (soFar !== null) return soFar;
      throw isLate ? new Refused('plan-took-too-long') : failure;
    } finally {
      clearTimeout(timer);
      signal?.removeEventListener('abort', cancel);
    }
  }
}
