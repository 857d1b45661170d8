import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../../domain/day.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { StatementDraftView } from './performance.dto.ts';
import { StatementIssuing } from './statement-issuing.service.ts';
import type { Outcome } from './statement-issuing.service.ts';
import { StatementPrinting } from './statement-printing.service.ts';
import type { PrintedStatement } from './statement-printing.service.ts';
import { StatementViews } from './statement-views.service.ts';

export interface SeasonContract {
  contractId: string;
  title: string;
  sponsorName: string;
}

/** What is to be printed of a contract: an issued statement, or what the next one would say. */
export interface StatementPaper {
  contractId: string;
  issuedId: string | null;
  draft: StatementDraftView;
}

export const STATEMENTS_AT_ONCE = 20;

/** Contracts whose latest term is of a season and was signed. `$2` the season, or null for all. */
export const CANDIDATES = `select contract.id as "contractId", contract.title, sponsor.name as "sponsorName"
  from contract
    join sponsor on sponsor.department_id = $1 and sponsor.id = contract.sponsor_id
    join term on term.department_id = $1 and term.contract_id = contract.id
      and term.number = (select max(latest.number) from term as latest where latest.department_id = $1 and latest.contract_id = contract.id)
  where contract.department_id = $1 and term.state <> 'draft' and ($2::uuid is null or term.season_id = $2)
  order by sponsor.name collate "und-x-icu", contract.number, contract.id`;

/** The statements of a season, for printing them all at once. Outside a unit of work. */
@Injectable()
export class StatementsOfSeason {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(StatementIssuing) private readonly issuing: StatementIssuing,
    @Inject(StatementPrinting) private readonly printing: StatementPrinting,
    @Inject(StatementViews) private readonly views: StatementViews,
  ) {}

  async seasons(): Promise<{ id: string; name: string }[]> {
    return this.work.run(() => this.work.sql<{ id: string; name: string }>('select id, name from season where department_id = $1 order by starts_on, name'));
  }

  async contracts(seasonId: string | null): Promise<SeasonContract[]> {
    return this.work.run(() => this.work.sql<SeasonContract>(CANDIDATES, [seasonId]));
  }

  /** Some contracts under one seal; what is refused is told, the others are issued all the same. */
  async issue(contractIds: readonly string[], throughOn: Day | null): Promise<Outcome[]> {
    const days = await this.work.run(() => this.issuing.days(throughOn));
    return this.issuing.issueTogether(contractIds, { ...days, runId: null });
  }

  /**
   * The statements of some contracts as they stand: the latest issued where the books still say the same, else a draft. They are read
   * together, because most of what a season says is read once for all of them.
   *
   * @param how `draft` means a draft even where one is issued
   */
  async papers(contractIds: readonly string[], how: 'asItStands' | 'draft', throughOn: Day | null): Promise<StatementPaper[]> {
    const drafts = await this.work.run(() => this.views.drafts(contractIds, throughOn));
    return drafts.map((draft) => ({ contractId: draft.contractId, issuedId: how === 'asItStands' && draft.saysTheSame ? draft.latest!.id : null, draft }));
  }

  async print({ issuedId, draft }: StatementPaper): Promise<PrintedStatement> {
    return issuedId === null ? this.printing.read(draft) : this.printing.issued(issuedId);
  }
}
