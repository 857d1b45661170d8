import { Inject, Injectable } from '@nestjs/common';
import type { OnApplicationBootstrap, OnModuleDestroy } from '@nestjs/common';
import { Refused, refuse } from '../../domain/refusals.ts';
import type { Instant } from '../../domain/instant.ts';
import { newId } from '../../platform/database/ids.ts';
import { NOWHERE, errands } from '../../platform/database/scope.ts';
import type { Scope } from '../../platform/database/scope.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { LOG } from '../../platform/log/log.ts';
import type { Log } from '../../platform/log/log.ts';
import { Season } from '../../season/season.entity.ts';
import type { StartStatementRunDto } from './performance.dto.ts';
import { StatementIssuing } from './statement-issuing.service.ts';
import type { Outcome } from './statement-issuing.service.ts';
import { StatementRun } from './statement-run.entity.ts';
import type { RunFailure } from './statement-run.entity.ts';
import { CANDIDATES, STATEMENTS_AT_ONCE } from './statements-of-season.service.ts';
import type { SeasonContract } from './statements-of-season.service.ts';

const LEFT = `select contract_id as id from (select unnest(contract_ids) as contract_id from statement_run where department_id = $1 and id = $2) as asked
  where contract_id not in (select statement.contract_id from performance_statement as statement where statement.department_id = $1 and statement.run_id = $2)
    and contract_id not in (select (failure ->> 'contractId')::uuid from statement_run, jsonb_array_elements(failures) as failure where department_id = $1 and id = $2)`;

const ISSUED = 'select contract_id as "contractId" from performance_statement where department_id = $1 and run_id = $2';

const UNDER_WAY = `select id, asked_by_person_id as "personId" from statement_run where department_id = $1 and state in ('waiting', 'running')`;

/**
 * Statements for all sponsors of a season: which contracts is written down first, then they are dealt with batch by batch. A run that
 * a restart broke off is gone on with when the server is up again; two servers at one run give no contract two statements.
 */
@Injectable()
export class StatementRuns implements OnApplicationBootstrap, OnModuleDestroy {
  private readonly driven = new Map<string, Promise<void>>();
  private isOver = false;

  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(StatementIssuing) private readonly issuing: StatementIssuing,
    @Inject(LOG) private readonly log: Log,
  ) {}

  /** Inside a unit of work; begins once that is committed. @throws Refused `not-found`, `statement-of-nobody` */
  async start({ seasonId, throughOn }: StartStatementRunDto): Promise<string> {
    await this.work.one(Season, seasonId);
    const contracts = await this.work.sql<SeasonContract>(CANDIDATES, [seasonId]);
    if (contracts.length === 0) refuse('statement-of-nobody');
    const id = newId();
    await this.work.insert(StatementRun, {
      id, seasonId, ...(await this.issuing.days(throughOn)), state: 'waiting', contractIds: contracts.map(({ contractId }) => contractId), failures: [],
      askedByPersonId: this.work.scope.personId, askedAt: new Date().toISOString() as Instant, endedAt: null,
    });
    const { scope } = this.work;
    this.work.afterCommit(() => this.begin(id, scope));
    return id;
  }

  /** Inside a unit of work. What is issued stays. @throws Refused `not-found`, `statement-run-over` */
  async cancel(id: string): Promise<void> {
    await this.work.one(StatementRun, id);
    await this.work.lock(StatementRun, [id]);
    const { state } = await this.work.one(StatementRun, id);
    if (state !== 'waiting' && state !== 'running') refuse('statement-run-over');
    await this.work.update(StatementRun, id, null, { state: 'cancelled', endedAt: new Date().toISOString() as Instant });
  }

  /** The runs that this process is at. */
  drivenNow(): ReadonlySet<string> {
    return new Set(this.driven.keys());
  }

  onApplicationBootstrap(): void {
    void this.resume().catch((failure: unknown) => this.log.error({ error: String(failure) }, 'runs of statements that broke off could not be looked for'));
  }

  async onModuleDestroy(): Promise<void> {
    this.isOver = true;
    await Promise.allSettled(this.driven.values());
  }

  /** Goes on with what a restart broke off, department by department. */
  private async resume(): Promise<void> {
    const departments = await this.work.runAs(NOWHERE, () => this.work.sqlEverywhere<{ id: string }>('select id from department order by id'));
    for (const { id: departmentId } of departments) {
      if (this.isOver) return;
      const runs = await this.work.runAs({ departmentId, personId: null }, () => this.work.sql<{ id: string; personId: string | null }>(UNDER_WAY));
      for (const { id, personId } of runs) this.begin(id, { departmentId, personId });
    }
  }

  private begin(id: string, scope: Scope): void {
    if (this.isOver || this.driven.has(id)) return;
    const driving = errands
      .run({ scope, manager: null }, () => this.drive(id))
      .catch((failure: unknown) => this.log.error({ statementRunId: id, error: failure instanceof Error ? failure.message : String(failure) }, 'a run of statements broke off; the next start goes on with it'))
      .finally(() => void this.driven.delete(id));
    this.driven.set(id, driving);
  }

  private async drive(id: string): Promise<void> {
    while (!this.isOver) {
      const { run, left } = await this.work.run(() => this.look(id));
      if (run.state === 'cancelled' || run.state === 'done') return;
      if (left.length === 0) return this.end(id);
      await this.issue(run, left.slice(0, STATEMENTS_AT_ONCE));
    }
  }

  private async look(id: string): Promise<{ run: StatementRun; left: string[] }> {
    const run = await this.work.one(StatementRun, id);
    if (run.state === 'waiting') await this.work.update(StatementRun, id, run.version, { state: 'running' });
    const left = await this.work.sql<{ id: string }>(LEFT, [id]);
    return { run, left: left.map((row) => row.id) };
  }

  /** Where a batch cannot be read, its contracts go one by one, so that one of them holds up no other. */
  private async issue(run: StatementRun, contractIds: readonly string[]): Promise<void> {
    const asked = { throughOn: run.throughOn, issuedOn: run.issuedOn, runId: run.id };
    try {
      await this.note(run.id, failuresIn(await this.issuing.issueTogether(contractIds, asked)));
    } catch (failure) {
      if (contractIds.length > 1) {
        for (const contractId of contractIds) if (!this.isOver) await this.issue(run, [contractId]);
        return;
      }
      const code = failure instanceof Refused ? failure.code : 'unexpected';
      if (code === 'unexpected') this.log.error({ statementRunId: run.id, contractId: contractIds[0], error: String(failure) }, 'a statement could not be made');
      const why = failure instanceof Refused ? failure.message : 'Something went wrong with this contract. The log of the server says what.';
      await this.note(run.id, [{ contractId: contractIds[0]!, code, why }]);
    }
  }

  /** A contract that has its reason already keeps it, and one to which another server gave a statement of this run has none. */
  private async note(id: string, failures: readonly RunFailure[]): Promise<void> {
    if (failures.length === 0) return;
    await this.work.run(async () => {
      await this.work.lock(StatementRun, [id]);
      const run = await this.work.one(StatementRun, id);
      const issued = await this.work.sql<{ contractId: string }>(ISSUED, [id]);
      const known = new Set([...run.failures, ...issued].map((one) => one.contractId));
      await this.work.update(StatementRun, id, null, { failures: [...run.failures, ...failures.filter((one) => !known.has(one.contractId))] });
    });
  }

  private async end(id: string): Promise<void> {
    await this.work.run(async () => {
      await this.work.lock(StatementRun, [id]);
      const { state } = await this.work.one(StatementRun, id);
      if (state === 'running') await this.work.update(StatementRun, id, null, { state: 'done', endedAt: new Date().toISOString() as Instant });
    });
  }
}

function failuresIn(outcomes: readonly Outcome[]): RunFailure[] {
  return outcomes.flatMap((one) => ('refused' in one ? [{ contractId: one.contractId, code: one.refused.code, why: one.refused.message }] : []));
}
