import { Inject, Injectable } from '@nestjs/common';
import { refuse } from '../../domain/refusals.ts';
import type { Day } from '../../domain/day.ts';
import type { StatementContent } from '../../domain/reports/statement-content.ts';
import { isId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Conditions, contains, pageOf } from '../../platform/http/lists.ts';
import type { Listed } from '../../platform/http/lists.ts';
import type { OwnStatementView, StatementDraftView, StatementListQuery, StatementView, WholeStatementView } from './performance.dto.ts';
import { StatementContents } from './statement-contents.service.ts';
import { StatementIssuing } from './statement-issuing.service.ts';

interface Row extends Omit<StatementView, 'replacedBy' | 'isOutOfDate'> {
  contentDigest: string;
  nextId: string | null;
  nextNumber: number | null;
  nextIssuedOn: Day | null;
}

const COLUMNS = `statement.id, statement.contract_id as "contractId", contract.number as "contractNumber", contract.title as "contractTitle",
  statement.content -> 'head' ->> 'sponsorId' as "sponsorId", statement.content -> 'head' ->> 'sponsorName' as "sponsorName", term.season_id as "seasonId", season.name as "seasonName", statement.number,
  statement.through_on as "throughOn", statement.issued_on as "issuedOn", person.name as "issuedByName", statement.seal_number as "sealNumber",
  statement.seal_head as "sealHead", statement.run_id as "runId", statement.content_digest as "contentDigest",
  next.id as "nextId", next.number as "nextNumber", next.issued_on as "nextIssuedOn"`;

const FROM = `from performance_statement as statement
  join contract on contract.department_id = $1 and contract.id = statement.contract_id
  join term on term.department_id = $1 and term.id = statement.term_id
  join season on season.department_id = $1 and season.id = term.season_id
  left join person on person.id = statement.issued_by_person_id
  left join performance_statement as next on next.department_id = $1 and next.contract_id = statement.contract_id and next.number = statement.number + 1`;

const SORTS = {
  issuedOn: 'statement.recorded_at', sponsorName: `statement.content -> 'head' ->> 'sponsorName' collate "und-x-icu"`, contractNumber: 'contract.number', number: 'statement.number', throughOn: 'statement.through_on',
};

/** Statements as they are shown: what overtook them and whether the books still say the same is found out on reading. */
@Injectable()
export class StatementViews {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(StatementContents) private readonly contents: StatementContents,
    @Inject(StatementIssuing) private readonly issuing: StatementIssuing,
  ) {}

  async list(query: StatementListQuery): Promise<Listed<StatementView>> {
    const on = new Conditions('statement.department_id')
      .add('statement.id = any(?::uuid[])', query.id)
      .add('term.season_id = ?', query.seasonId)
      .add(`statement.content -> 'head' ->> 'sponsorId' = ?`, query.sponsorId)
      .add('statement.contract_id = ?', query.contractId)
      .add('statement.run_id = ?', query.runId)
      .add(`(statement.content -> 'head' ->> 'sponsorName' ilike ? or contract.title ilike ? or contract.number ilike ?)`, contains(query.q))
      .when(query.standing === 'latest', 'next.id is null')
      .when(query.standing === 'replaced', 'next.id is not null');
    const [count] = await this.work.sql<{ total: number }>(`select count(*) as total ${FROM} where ${on.where}`, on.parameters);
    const rows = await this.work.sql<Row>(`select ${COLUMNS} ${FROM} where ${on.where} ${pageOf({ ...query, sort: query.sort ?? '-issuedOn' }, SORTS, 'statement.id')}`, on.parameters);
    return { data: await this.seen(rows), total: count?.total ?? 0 };
  }

  /** @throws Refused `not-found` */
  async one(id: string): Promise<WholeStatementView> {
    const { content, ...row } = await this.row(id);
    const [view] = await this.seen([row]);
    return { ...view!, content };
  }

  /** As it was stored, and what overtook it; not compared with the books. @throws Refused `not-found` */
  async stored(id: string): Promise<Omit<WholeStatementView, 'isOutOfDate'>> {
    const { content, ...row } = await this.row(id);
    return { ...shown(row), content };
  }

  private async row(id: string): Promise<Row & { content: StatementContent }> {
    if (!isId(id)) return refuse('not-found');
    const [row] = await this.work.sql<Row & { content: StatementContent }>(`select ${COLUMNS}, statement.content ${FROM} where statement.department_id = $1 and statement.id = $2`, [id]);
    return row ?? refuse('not-found');
  }

  /** Those issued to a sponsor, the latest first, as the bearer of its link sees them; not compared with the books. What was issued to a new owner is not told. */
  async ofSponsor(sponsorId: string): Promise<OwnStatementView[]> {
    const rows = await this.work.sql<Row & { titleThen: string; isNextOwn: boolean | null }>(
      `select ${COLUMNS}, statement.content -> 'head' ->> 'contractTitle' as "titleThen", next.content -> 'head' ->> 'sponsorId' = $2 as "isNextOwn"
       ${FROM} where statement.department_id = $1 and statement.content -> 'head' ->> 'sponsorId' = $2 order by statement.issued_on desc, contract.number, statement.number desc limit 200`,
      [sponsorId],
    );
    return rows.map((row) => {
      const { id, contractNumber, seasonName, number, throughOn, issuedOn, replacedBy } = shown(row);
      return { id, contractNumber, contractTitle: row.titleThen, seasonName, number, throughOn, issuedOn, replacedBy: row.isNextOwn ? replacedBy : null };
    });
  }

  /** What the next one would say. */
  async draft(contractId: string, throughOn: string | null | undefined): Promise<StatementDraftView> {
    const [draft] = isId(contractId) ? await this.drafts([contractId], throughOn) : [];
    return draft ?? refuse('not-found');
  }

  /** The same of several, read together. */
  async drafts(contractIds: readonly string[], throughOn: string | null | undefined): Promise<StatementDraftView[]> {
    const days = await this.issuing.days(throughOn);
    const latest = await this.issuing.latest(contractIds);
    return (await this.contents.ofContracts(contractIds, days.throughOn)).map(({ head: { contractId }, content, contentDigest }) => {
      const before = latest.get(contractId);
      return { contractId, throughOn: days.throughOn, latest: before ? { id: before.id, number: before.number } : null, saysTheSame: before?.contentDigest === contentDigest, content };
    });
  }

  /** Only the latest of a contract is compared with the books; those told through the same day are read together. */
  private async seen(rows: readonly Row[]): Promise<StatementView[]> {
    const latest = rows.filter((row) => row.nextId === null);
    const said = new Map<string, string>();
    for (const throughOn of new Set(latest.map((row) => row.throughOn))) {
      const contractIds = latest.filter((row) => row.throughOn === throughOn).map((row) => row.contractId);
      for (const read of await this.contents.ofContracts(contractIds, throughOn)) said.set(read.head.contractId, read.contentDigest);
    }
    return rows.map((row) => ({ ...shown(row), isOutOfDate: row.nextId === null && said.get(row.contractId) !== row.contentDigest }));
  }
}

function shown({ contentDigest: _, nextId, nextNumber, nextIssuedOn, ...row }: Row): Omit<StatementView, 'isOutOfDate'> {
  return { ...row, replacedBy: nextId === null ? null : { id: nextId, number: nextNumber!, issuedOn: nextIssuedOn! } };
}
