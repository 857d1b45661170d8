import { existsSync } from 'node:fs';
import { Worker } from 'node:worker_threads';
import type { SeasonPlan } from '../../domain/planning/season.ts';
import type { SolveAnswer, SolveOrder } from './solve-order.ts';

/** Solving went wrong on our side; the reason is for the log, not for a reader. */
export class SolvingFailed extends Error {
  constructor(readonly reason: string) {
    super(`the plan could not be worked out: ${reason}`);
  }
}

export interface ThreadOptions {
  readonly workerFile?: URL;
  /** of the worker's own memory; a season that wants more costs its worker, not the server */
  readonly mostMemoryMegabytes?: number;
}

interface Asked {
  readonly id: number;
  readonly onSoFar: (plan: SeasonPlan) => void;
  readonly resolve: (plan: SeasonPlan) => void;
  readonly reject: (failure: Error) => void;
}

const WORKER = 'plan-solving.worker.js';
/** Sources run from their own folder, the built server from `.build`. */
function builtWorker(): URL {
  const beside = new URL(`./${WORKER}`, import.meta.url);
  return existsSync(beside) ? beside : new URL(`../../../.build/server/planning/solver/${WORKER}`, import.meta.url);
}

/** One worker thread that solves one season at a time; after a failure or an end the next season gets a fresh one. */
export class SolvingThread {
  private worker: Worker | null = null;
  private asked: Asked | null = null;

  constructor(private readonly options: ThreadOptions) {}

  get isIdle(): boolean {
    return this.asked === null;
  }

  /** @throws SolvingFailed where the worker fails, dies or is ended */
  ask(order: SolveOrder, onSoFar: (plan: SeasonPlan) => void): Promise<SeasonPlan> {
    return new Promise((resolve, reject) => {
      this.asked = { id: order.id, onSoFar, resolve, reject };
      try {
        const worker = (this.worker ??= this.start());
        worker.ref();
        worker.postMessage(order);
      } catch (failure) {
        this.settle((one) => one.reject(new SolvingFailed(String(failure))));
      }
    });
  }

  /** Ends the worker at once, whatever it is doing. */
  async end(): Promise<void> {
    const { worker } = this;
    this.worker = null;
    this.settle((one) => one.reject(new SolvingFailed('the worker was ended')));
    await worker?.terminate();
  }

  private start(): Worker {
    const worker = new Worker(this.options.workerFile ?? builtWorker(), { resourceLimits: { maxOldGenerationSizeMb: this.options.mostMemoryMegabytes ?? 1024 } });
    worker.on('message', (answer: SolveAnswer) => this.hear(answer));
    const lost = (failure: Error): void => {
      if (this.worker !== worker) return;
      this.worker = null;
      this.settle((one) => one.reject(failure));
    };
    worker.on('error', (failure) => lost(new SolvingFailed(String(failure))));
    worker.on('exit', (code) => lost(new SolvingFailed(`the worker ended with ${code}`)));
    return worker;
  }

  private hear(answer: SolveAnswer): void {
    if (answer.id !== this.asked?.id) return;
    if (answer.kind === 'soFar') this.asked.onSoFar(answer.plan);
    else if (answer.kind === 'plan') this.settle((one) => one.resolve(answer.plan));
    else {
      const { worker } = this;
      this.worker = null;
      void worker?.terminate();
      this.settle((one) => one.reject(new SolvingFailed(answer.reason)));
    }
  }

  private settle(end: (one: Asked) => void): void {
    const one = this.asked;
    this.asked = null;
    this.worker?.unref();
    if (one !== null) end(one);
  }
}
