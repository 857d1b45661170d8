import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { SealService } from '../../access/seal.service.ts';
import type { SealView } from '../../access/audit.dto.ts';
import type { Day } from '../../domain/day.ts';
import { Refused, refuse } from '../../domain/refusals.ts';
import { newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Contract } from '../../sponsorship/contract.entity.ts';
import { LATEST } from './performance.sql.ts';
import { StatementContents } from './statement-contents.service.ts';
import type { ReadStatement } from './statement-contents.service.ts';

export interface LatestStatement {
  contractId: string;
  id: string;
  number: number;
  contentDigest: string;
}

export interface IssueAsked {
  throughOn: Day;
  issuedOn: Day;
  runId: string | null;
}

export type Outcome = { contractId: string; statementId: string } | { contractId: string; refused: Refused };

/**
 * Issues statements, outside a unit of work: reads what they say, closes, seals the books in a unit of its own, and stores each.
 * So everything a statement says lies under the seal whose head it bears.
 */
@Injectable()
export class StatementIssuing {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(StatementContents) private readonly contents: StatementContents,
    @Inject(SealService) private readonly seals: SealService,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  /** The days of a statement for which nobody said any. Inside a unit. */
  async days(throughOn: string | null | undefined): Promise<{ throughOn: Day; issuedOn: Day }> {
    const today = await this.departments.today();
    return { throughOn: (throughOn as Day | null | undefined) ?? today, issuedOn: today };
  }

  /**
   * @returns the id of the statement
   * @throws Refused `not-found`, `statement-before-signing`, `statement-says-the-same`
   */
  async issue(contractId: string, throughOn: string | null | undefined): Promise<string> {
    const { read, days } = await this.work.run(async () => {
      const asked = await this.days(throughOn);
      const found = await this.contents.of(contractId, asked.throughOn);
      refuseTheSame(found, (await this.latest([contractId])).get(contractId));
      return { read: found, days: asked };
    });
    const seal = await this.work.run(() => this.seals.seal());
    return this.store(read, seal, { ...days, runId: null });
  }

  /** Several under one seal. What is refused is answered, not thrown. */
  async issueTogether(contractIds: readonly string[], asked: IssueAsked): Promise<Outcome[]> {
    const { reads, latest } = await this.work.run(async () => ({
      reads: await this.contents.ofContracts(contractIds, asked.throughOn), latest: await this.latest(contractIds),
    }));
    const says = (read: ReadStatement): boolean => latest.get(read.head.contractId)?.contentDigest !== read.contentDigest;
    const seal = reads.some(says) ? await this.work.run(() => this.seals.seal()) : null;
    const found = new Set(reads.map((read) => read.head.contractId));
    const outcomes: Outcome[] = contractIds.filter((id) => !found.has(id)).map((contractId) => ({ contractId, refused: new Refused('not-found') }));
    for (const read of reads) {
      const { contractId } = read.head;
      try {
        if (seal === null || !says(read)) refuseTheSame(read, latest.get(contractId));
        outcomes.push({ contractId, statementId: await this.store(read, seal!, asked) });
      } catch (failure) {
        if (!(failure instanceof Refused)) throw failure;
        outcomes.push({ contractId, refused: failure });
      }
    }
    return outcomes;
  }

  /** The latest statement of each contract that has one. Inside a unit. */
  async latest(contractIds: readonly string[]): Promise<Map<string, LatestStatement>> {
    return new Map((await this.work.sql<LatestStatement>(LATEST, [contractIds])).map((row) => [row.contractId, row]));
  }

  private async store({ head: { contractId, termId }, content, contentDigest }: ReadStatement, seal: SealView, { throughOn, issuedOn, runId }: IssueAsked): Promise<string> {
    return this.work.run(async () => {
      await this.work.lock(Contract, [contractId]);
      const latest = (await this.latest([contractId])).get(contractId);
      if (latest && (latest.contentDigest === contentDigest || (runId !== null && (await this.hasOf(runId, contractId))))) refuse('statement-says-the-same', { number: latest.number });
      const id = newId();
      await this.work.add('performance_statement', [{
        id, contractId, termId, number: (latest?.number ?? 0) + 1, runId, throughOn, issuedOn, content, contentDigest,
        sealNumber: seal.number, sealHead: seal.head, issuedByPersonId: this.work.scope.personId,
      }]);
      return id;
    });
  }

  /** Another server is at the same run, and was first. */
  private async hasOf(runId: string, contractId: string): Promise<boolean> {
    return (await this.work.sql('select 1 from performance_statement where department_id = $1 and run_id = $2 and contract_id = $3', [runId, contractId])).length > 0;
  }
}

function refuseTheSame(read: ReadStatement, latest: LatestStatement | undefined): void {
  if (latest?.contentDigest === read.contentDigest) refuse('statement-says-the-same', { number: latest.number });
}
