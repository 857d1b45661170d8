import { Inject, Injectable } from '@nestjs/common';
import type { OnModuleDestroy } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import type { Day } from '../../domain/day.ts';
import { refuse } from '../../domain/refusals.ts';
import { newId } from '../../platform/database/ids.ts';
import { errands } from '../../platform/database/scope.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { LOG } from '../../platform/log/log.ts';
import type { Log } from '../../platform/log/log.ts';
import { BillingBatch } from './billing-batch.service.ts';
import { BillingPreview } from './billing-preview.service.ts';
import type { StartBillingRunDto } from './billing-run.dto.ts';
import { BillingRun } from './billing-run.entity.ts';

const CONTRACTS_AT_ONCE = 50;

const LEFT = `select unnest(contract_ids) as id from billing_run where department_id = $1 and id = $2
  except select contract_id from billing_run_line where department_id = $1 and billing_run_id = $2 order by id`;

/**
 * Billing runs: which contracts are dealt with is written down first, then they are dealt with batch by batch, each a
 * transaction of its own. So a run may break off anywhere and be gone on with by whoever asks.
 */
@Injectable()
export class BillingRuns implements OnModuleDestroy {
  private readonly driven = new Map<string, Promise<void>>();
  private isOver = false;

  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(BillingPreview) private readonly previews: BillingPreview,
    @Inject(BillingBatch) private readonly batches: BillingBatch,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(LOG) private readonly log: Log,
  ) {}

  /** @throws Refused `run-is-not-billable` */
  async start({ throughDay, issuedOn, sellerId }: StartBillingRunDto): Promise<string> {
    const contractIds = await this.previews.candidates(sellerId ?? null);
    if (contractIds.length === 0) refuse('run-is-not-billable');
    const on = (issuedOn ?? (await this.departments.today())) as Day;
    const id = newId();
    const startedByPersonId = this.work.scope.personId;
    await this.work.insert(BillingRun, { id, throughDay: throughDay as Day, issuedOn: on, sellerId: sellerId ?? null, contractIds, startedByPersonId });
    return id;
  }

  /** Goes on with a run once the present unit is committed; the answer does not wait for it. */
  async driveAfterwards(id: string): Promise<void> {
    await this.work.one(BillingRun, id);
    const scope = this.work.scope;
    this.work.afterCommit(() => {
      void errands.run({ scope, manager: null }, () => this.drive(id)).catch((failure: unknown) => {
        this.log.error({ billingRunId: id, error: failure instanceof Error ? failure.message : String(failure) }, 'a billing run broke off; it can be continued');
      });
    });
  }

  /** The runs that this process is at. */
  drivenNow(): ReadonlySet<string> {
    return new Set(this.driven.keys());
  }

  /** Deals with what a run has left to do, outside a unit. Two who drive the same run in one process drive it together. */
  async drive(id: string, onProgress: (done: number, of: number) => void = () => undefined): Promise<void> {
    const running = this.driven.get(id);
    if (running) return running;
    const driving = this.driveAlone(id, onProgress).finally(() => this.driven.delete(id));
    this.driven.set(id, driving);
    return driving;
  }

  async onModuleDestroy(): Promise<void> {
    this.isOver = true;
    await Promise.allSettled(this.driven.values());
  }

  private async driveAlone(id: string, onProgress: (done: number, of: number) => void): Promise<void> {
    const [run, left] = await this.work.run(async () => [await this.work.one(BillingRun, id), await this.work.sql<{ id: string }>(LEFT, [id])] as const);
    const all = run.contractIds.length;
    for (let from = 0; from < left.length && !this.isOver; from += CONTRACTS_AT_ONCE) {
      onProgress(all - left.length + from, all);
      await this.batches.bill(run, left.slice(from, from + CONTRACTS_AT_ONCE).map((one) => one.id));
    }
    if (!this.isOver) onProgress(all, all);
  }
}
