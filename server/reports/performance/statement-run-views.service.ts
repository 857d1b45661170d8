import { Inject, Injectable } from '@nestjs/common';
import { refuse } from '../../domain/refusals.ts';
import { isId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Conditions, pageOf } from '../../platform/http/lists.ts';
import type { ListQuery, Listed } from '../../platform/http/lists.ts';
import type { StatementRunLine, StatementRunView, WholeStatementRunView } from './performance.dto.ts';
import type { RunFailure } from './statement-run.entity.ts';
import { StatementRuns } from './statement-runs.service.ts';

interface Row extends Omit<StatementRunView, 'isRunning' | 'done' | 'theSame' | 'failed'> {
  failures: RunFailure[];
}

const VIEW = `run.id, run.season_id as "seasonId", season.name as "seasonName", run.through_on as "throughOn", run.issued_on as "issuedOn", run.state,
  run.asked_at as "askedAt", person.name as "askedByName", cardinality(run.contract_ids) as contracts, run.failures, run.version,
  (select count(*) from performance_statement as statement where statement.department_id = $1 and statement.run_id = run.id) as issued
  from statement_run as run
    join season on season.department_id = $1 and season.id = run.season_id
    left join person on person.id = run.asked_by_person_id`;

const SORTS = { askedAt: 'run.asked_at', throughOn: 'run.through_on' };

const LINES = `select contract.id as "contractId", contract.number as "contractNumber", contract.title as "contractTitle", sponsor.name as "sponsorName",
    statement.id as "statementId", statement.number
  from statement_run as run
    join contract on contract.department_id = $1 and contract.id = any(run.contract_ids)
    join sponsor on sponsor.department_id = $1 and sponsor.id = contract.sponsor_id
    left join performance_statement as statement on statement.department_id = $1 and statement.run_id = run.id and statement.contract_id = contract.id
  where run.department_id = $1 and run.id = $2 order by sponsor.name collate "und-x-icu", contract.number, contract.id`;

/** Runs of statements as they are shown: how far they have come is counted on reading. */
@Injectable()
export class StatementRunViews {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(StatementRuns) private readonly runs: StatementRuns,
  ) {}

  async list(query: ListQuery): Promise<Listed<StatementRunView>> {
    const on = new Conditions('run.department_id').add('run.id = any(?::uuid[])', query.id);
    const [count] = await this.work.sql<{ total: number }>(`select count(*) as total from statement_run as run where ${on.where}`, on.parameters);
    const driven = this.runs.drivenNow();
    const rows = await this.work.sql<Row>(`select ${VIEW} where ${on.where} ${pageOf({ ...query, sort: query.sort ?? '-askedAt' }, SORTS, 'run.id')}`, on.parameters);
    return { data: rows.map((row) => seen(row, driven)), total: count?.total ?? 0 };
  }

  /** @throws Refused `not-found` */
  async one(id: string): Promise<WholeStatementRunView> {
    if (!isId(id)) return refuse('not-found');
    const driven = this.runs.drivenNow();
    const [row] = await this.work.sql<Row>(`select ${VIEW} where run.department_id = $1 and run.id = $2`, [id]);
    if (!row) return refuse('not-found');
    const failures = new Map(row.failures.map((one) => [one.contractId, one]));
    const lines = await this.work.sql<Omit<StatementRunLine, 'outcome' | 'why'>>(LINES, [id]);
    return { ...seen(row, driven), lines: lines.flatMap((line) => lineOf(line, failures.get(line.contractId))) };
  }
}

/** What the run has dealt with; the others are still to do. */
function lineOf(line: Omit<StatementRunLine, 'outcome' | 'why'>, failure: RunFailure | undefined): StatementRunLine[] {
  if (line.statementId !== null) return [{ ...line, outcome: 'issued', why: null }];
  return failure ? [{ ...line, outcome: failure.code === 'statement-says-the-same' ? 'theSame' : 'failed', why: failure.why }] : [];
}

/** @param driven taken before the row was read: a run that ends in between was running when it was read */
function seen({ failures, ...row }: Row, driven: ReadonlySet<string>): StatementRunView {
  const theSame = failures.filter((one) => one.code === 'statement-says-the-same').length;
  const isUnderWay = row.state === 'waiting' || row.state === 'running';
  return { ...row, done: row.issued + failures.length, theSame, failed: failures.length - theSame, isRunning: isUnderWay && driven.has(row.id) };
}
