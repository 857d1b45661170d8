import type { AgingBasis } from '../../domain/billing/aging.ts';
import { FORMATS } from '../../platform/files/file-answer.ts';
import type { ReportFormat } from '../../platform/files/file-answer.ts';
import { ChoiceField, DayField } from '../../platform/http/fields.ts';
import type { CauseView } from './statement.dto.ts';

export class StatementSpanQuery {
  /** without it, the first day of the fiscal year */
  @DayField({ optional: true }) from?: string;
  /** without it, today */
  @DayField({ optional: true }) to?: string;
}

export class SponsorAccountQuery extends StatementSpanQuery {
  /** for the screen, or a file for a spreadsheet */
  @ChoiceField(FORMATS, { optional: true }) format?: ReportFormat;
}

export interface SponsorAccountLine {
  id: string;
  on: string;
  sentence: string;
  document: CauseView | null;
  /** what the sponsor owes more for it */
  chargeCents: number;
  /** what the sponsor owes less for it */
  creditCents: number;
  balanceCents: number;
}

/** Dealings with one seller of record. A balance is what is open on invoices less credit not applied yet. */
export interface SellerAccount {
  sellerId: string;
  sellerName: string;
  openingCents: number;
  lines: SponsorAccountLine[];
  closingCents: number;
  /** what is open on invoices on the last day, by age */
  bucketCents: number[];
  openCents: number;
  /** credit not applied yet, above zero */
  unappliedCents: number;
}

export interface SponsorAccountView {
  sponsorId: string;
  sponsorName: string;
  from: string;
  to: string;
  by: AgingBasis;
  buckets: string[];
  sellers: SellerAccount[];
}
