import type { Day } from '../../domain/day.ts';
import type { Instant } from '../../domain/instant.ts';
import type { StatementContent } from '../../domain/reports/statement-content.ts';
import { ChoiceField, DayField, IdField } from '../../platform/http/fields.ts';
import { ListQuery } from '../../platform/http/lists.ts';

export type { StatementContent } from '../../domain/reports/statement-content.ts';

export const STATEMENT_STANDINGS = ['latest', 'replaced'] as const;

export class ThroughQuery {
  /** the last day of which anything is said; without it, today */
  @DayField({ optional: true }) throughOn?: string;
}

export class IssueStatementDto {
  /** the last day of which anything is said; without it, today */
  @DayField({ optional: true, nullable: true }) throughOn?: string | null;
}

export class StatementListQuery extends ListQuery {
  @IdField({ optional: true }) seasonId?: string;
  @IdField({ optional: true }) sponsorId?: string;
  @IdField({ optional: true }) contractId?: string;
  @IdField({ optional: true }) runId?: string;
  @ChoiceField(STATEMENT_STANDINGS, { optional: true }) standing?: (typeof STATEMENT_STANDINGS)[number];
}

export class StartStatementRunDto {
  @IdField() seasonId: string;
  /** the last day of which anything is said; without it, today */
  @DayField({ optional: true, nullable: true }) throughOn?: string | null;
}

export interface NextStatement {
  id: string;
  number: number;
  issuedOn: Day;
}

/** An issued statement as lists show it. What it says never changes; how it stands is told on reading. */
export interface StatementView {
  id: string;
  contractId: string;
  contractNumber: string | null;
  contractTitle: string;
  sponsorId: string;
  sponsorName: string;
  seasonId: string;
  seasonName: string;
  number: number;
  throughOn: Day;
  issuedOn: Day;
  /** null where it was issued from the command line */
  issuedByName: string | null;
  sealNumber: number;
  sealHead: string;
  runId: string | null;
  /** the one that overtook it */
  replacedBy: NextStatement | null;
  /** the books say something else by now of the same days, and no statement tells it yet */
  isOutOfDate: boolean;
}

export interface WholeStatementView extends StatementView {
  content: StatementContent;
}

/** An issued statement as the bearer of the sponsor's link sees it. */
export type OwnStatementView = Pick<StatementView, 'id' | 'contractNumber' | 'contractTitle' | 'seasonName' | 'number' | 'throughOn' | 'issuedOn' | 'replacedBy'>;

/** What a statement would say now. */
export interface StatementDraftView {
  contractId: string;
  throughOn: Day;
  /** the latest one issued */
  latest: { id: string; number: number } | null;
  /** issuing would be refused: the latest says the same */
  saysTheSame: boolean;
  content: StatementContent;
}

/** Whether the paper agrees with the books. */
export interface StatementCheckView {
  id: string;
  sealNumber: number;
  sealHead: string;
  /** the seal is in the chain with this very head, each head from it to the latest follows from the one before, and the rows it covers are what they were */
  isVerified: boolean;
  /** the latest seal that the chain was followed to */
  followedTo: number;
  /** in one sentence */
  words: string;
}

export type StatementRunState = 'waiting' | 'running' | 'done' | 'failed' | 'cancelled';

export interface StatementRunLine {
  contractId: string;
  contractNumber: string | null;
  contractTitle: string;
  sponsorName: string;
  outcome: 'issued' | 'theSame' | 'failed';
  statementId: string | null;
  number: number | null;
  why: string | null;
}

export interface StatementRunView {
  id: string;
  seasonId: string;
  seasonName: string;
  throughOn: Day;
  issuedOn: Day;
  state: StatementRunState;
  askedAt: Instant;
  /** null where it was asked for from the command line */
  askedByName: string | null;
  contracts: number;
  done: number;
  issued: number;
  /** contracts whose latest statement says the same */
  theSame: number;
  failed: number;
  /** this server is at it now */
  isRunning: boolean;
  version: number;
}

export interface WholeStatementRunView extends StatementRunView {
  lines: StatementRunLine[];
}
