import type { AgingBasis } from '../../domain/billing/aging.ts';
import type { RollForward } from '../../domain/billing/roll-forward.ts';
import type { CauseView } from '../../billing/statements/statement.dto.ts';
import { FORMATS } from '../../platform/files/file-answer.ts';
import type { ReportFormat } from '../../platform/files/file-answer.ts';
import { ChoiceField, DayField, IdField, PatternField } from '../../platform/http/fields.ts';

const OPEN = { optional: true };

export class ReportQuery {
  /** without it, the first seller of record whose books are kept here */
  @IdField(OPEN) sellerId?: string;
  /** for the screen, or a file for a spreadsheet */
  @ChoiceField(FORMATS, OPEN) format?: ReportFormat;
}

export class AsOfQuery extends ReportQuery {
  /** without it, today */
  @DayField(OPEN) on?: string;
}

export class AgingQuery extends AsOfQuery {
  /** without it, as the department has set */
  @ChoiceField(['dueDay', 'invoiceAge'], OPEN) by?: AgingBasis;
}

export class SpanQuery extends ReportQuery {
  /** without it, the first day of the fiscal year */
  @DayField(OPEN) from?: string;
  /** without it, today */
  @DayField(OPEN) to?: string;
}

export class AccountLedgerQuery extends SpanQuery {
  /** without it, accounts receivable */
  @PatternField(/^\d{4}$/, 'is an account such as 1100', OPEN) account?: string;
}

export interface OfSeller {
  sellerId: string | null;
  sellerName: string | null;
}

export interface TrialBalanceLine {
  account: string;
  name: string;
  /** what the account is called in the district's books */
  outsideCode: string | null;
  debitCents: number;
  creditCents: number;
}

export interface TrialBalanceView extends OfSeller {
  on: string;
  lines: TrialBalanceLine[];
  debitCents: number;
  creditCents: number;
}

export interface LedgerLine {
  id: string;
  bookedOn: string;
  occurredOn: string;
  sentence: string;
  cause: CauseView | null;
  contractId: string | null;
  contractTitle: string | null;
  /** the account on the other side */
  against: string;
  debitCents: number;
  creditCents: number;
  /** debit above zero */
  balanceCents: number;
}

export interface AccountLedgerView extends OfSeller {
  account: string;
  name: string;
  from: string;
  to: string;
  openingCents: number;
  lines: LedgerLine[];
  closingCents: number;
  /** how many postings are left off at the end, where there are more than a page can hold */
  leftOff: number;
  accounts: { code: string; name: string }[];
}

export interface AgingLine {
  sponsorId: string | null;
  sponsorName: string | null;
  payerId: string;
  payerName: string;
  bucketCents: number[];
  totalCents: number;
  /** credit not applied yet, above zero */
  unappliedCents: number;
  oldestNumber: string | null;
  oldestDays: number | null;
}

export interface AgingView extends OfSeller {
  on: string;
  by: AgingBasis;
  buckets: string[];
  lines: AgingLine[];
  bucketCents: number[];
  totalCents: number;
  unappliedCents: number;
}

export interface RollForwardLine extends RollForward {
  contractId: string;
  contractNumber: string | null;
  contractTitle: string;
  sponsorName: string;
}

export interface RollForwardView extends OfSeller {
  from: string;
  to: string;
  lines: RollForwardLine[];
  total: RollForward;
}

/** Revenue accounts by name; an allowance is below zero. */
export interface IncomeAmounts {
  sponsorshipCents: number;
  inKindCents: number;
  unreadCents: number;
  allowancesCents: number;
  totalCents: number;
}

export interface IncomeLine extends IncomeAmounts {
  /** null for what belongs to no team */
  teamId: string | null;
  teamName: string | null;
  schoolId: string | null;
  schoolName: string | null;
  seasonName: string | null;
}

export interface IncomeSplitView extends OfSeller {
  from: string;
  to: string;
  lines: IncomeLine[];
  total: IncomeAmounts;
}
