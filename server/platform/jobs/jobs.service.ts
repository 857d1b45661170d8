import { Inject, Injectable } from '@nestjs/common';
import type { BeforeApplicationShutdown, OnApplicationBootstrap } from '@nestjs/common';
import PgBoss from 'pg-boss';
import { CONFIG } from '../config/config.ts';
import type { Config } from '../config/config.ts';
import { errands } from '../database/scope.ts';
import { UnitOfWork } from '../database/unit-of-work.ts';
import { LOG } from '../log/log.ts';
import type { Log } from '../log/log.ts';

/** The queues that migration 0016 made; the second takes what the first gave up. */
export type Queue = 'letter' | 'letter-given-up';

/** Ids and nothing else: what it is about is read when it is done. The id of a job is the id of its subject, so there is one job for it. */
export interface Job {
  readonly departmentId: string;
  readonly subjectId: string;
}

/** Done once or several times, it comes to the same. A throw means: again, later. */
export type JobHandler = (job: Job) => Promise<void>;

const LOOK_EVERY_MILLISECONDS = 2000;
const SOON_MILLISECONDS = 150;
const AT_ONCE = 4;
const LONGEST_GOODBYE_MILLISECONDS = 10_000;

/**
 * Work that goes on after an answer: asked for in a unit of work and begun only when that is committed. Each process
 * looks for jobs; a row that one has taken the others step over.
 */
@Injectable()
export class Jobs implements OnApplicationBootstrap, BeforeApplicationShutdown {
  private readonly handlers = new Map<Queue, JobHandler>();
  private readonly boss: PgBoss;
  private clock: NodeJS.Timeout | null = null;
  private looking: Promise<void> | null = null;
  private isOver = false;

  constructor(
    @Inject(CONFIG) config: Config,
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(LOG) private readonly log: Log,
  ) {
    // No schedule: it would make queues, and the login that runs may not. What is done each day is asked for by whoever does it.
    this.boss = new PgBoss({
      connectionString: config.databaseUrl, application_name: 'rafterline jobs', max: 2, schema: 'job',
      migrate: false, schedule: false, supervise: true, maintenanceIntervalSeconds: 60,
    });
    this.boss.on('error', (error) => this.log.warn({ error: error.message }, 'the queues of jobs could not be looked after; the next look tries again'));
  }

  /** Said once, before the server is up. */
  handle(queue: Queue, handler: JobHandler): void {
    this.handlers.set(queue, handler);
  }

  /** Asks for a job in the present unit of work: both happen or neither. What waits there already is left as it is. */
  async ask(queue: Queue, subjectId: string): Promise<void> {
    const job: Job = { departmentId: this.work.departmentId, subjectId };
    await this.boss.send(queue, job, { id: subjectId, db: { executeSql: (text, values) => this.work.statement(text, values) } });
    if (!this.isOver) setTimeout(() => this.look(), SOON_MILLISECONDS).unref();
  }

  async onApplicationBootstrap(): Promise<void> {
    await this.boss.start();
    this.clock = setInterval(() => this.look(), LOOK_EVERY_MILLISECONDS);
    this.clock.unref();
  }

  /** Nothing new is begun; what is under way is waited for, and what does not end in time is done by the next server. */
  async beforeApplicationShutdown(): Promise<void> {
    this.isOver = true;
    if (this.clock) clearInterval(this.clock);
    await Promise.race([this.looking, new Promise((done) => setTimeout(done, LONGEST_GOODBYE_MILLISECONDS).unref())]);
    await this.boss.stop({ graceful: false, wait: true }).catch(() => undefined);
  }

  private look(): void {
    if (this.isOver) return;
    this.looking ??= this.doWhatWaits()
      .catch((error: unknown) => this.log.warn({ error: String(error) }, 'the jobs could not be looked at; the next look tries again'))
      .finally(() => void (this.looking = null));
  }

  private async doWhatWaits(): Promise<void> {
    for (const queue of this.handlers.keys()) {
      for (let found = AT_ONCE; found === AT_ONCE && !this.isOver; ) {
        const jobs = await this.boss.fetch<Job>(queue, { batchSize: AT_ONCE });
        found = jobs.length;
        for (const job of jobs) await this.doOne(queue, job);
      }
    }
  }

  private async doOne(queue: Queue, { id, data }: PgBoss.Job<Job>): Promise<void> {
    const scope = { departmentId: data.departmentId, personId: null };
    try {
      await errands.run({ scope, manager: null }, async () => this.handlers.get(queue)!(data));
      await this.boss.complete(queue, id);
    } catch (error) {
      this.log.warn({ queue, job: id, error: String(error) }, 'a job was not done; it is tried again');
      await this.boss.fail(queue, id, { why: String(error).slice(0, 500) });
    }
  }
}
