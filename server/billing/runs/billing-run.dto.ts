import { DayField, IdField } from '../../platform/http/fields.ts';
import { ListQuery } from '../../platform/http/lists.ts';
import type { DueView } from '../invoices/invoice.dto.ts';

const OPEN = { optional: true, nullable: true };

export class StartBillingRunDto {
  @DayField() throughDay: string;
  /** the day of the invoices; without it, today */
  @DayField(OPEN) issuedOn?: string | null;
  /** only contracts of this seller of record */
  @IdField(OPEN) sellerId?: string | null;
}

export class PreviewQuery {
  /** without it, today */
  @DayField({ optional: true }) through?: string;
  @DayField({ optional: true }) issuedOn?: string;
  @IdField({ optional: true }) sellerId?: string;
}

export class BillingRunListQuery extends ListQuery {
  @IdField({ optional: true }) sellerId?: string;
}

/** The money of one seller of record in a run. */
export interface SellerTotal {
  sellerId: string;
  sellerName: string;
  invoices: number;
  netCents: number;
  grossCents: number;
}

/** One contract before a run: who, what, why and how much, or why it is skipped. */
export interface PreviewLineView {
  contractId: string;
  contractNumber: string | null;
  contractTitle: string;
  sponsorName: string;
  payerName: string;
  sellerId: string;
  sellerName: string;
  isSkipped: boolean;
  /** a plain sentence */
  why: string;
  lines: DueView['lines'];
  netCents: number;
  taxCents: number;
  grossCents: number;
}

export interface PreviewView {
  throughDay: string;
  issuedOn: string;
  contracts: PreviewLineView[];
  totals: SellerTotal[];
}

export interface BillingRunView {
  id: string;
  throughDay: string;
  issuedOn: string;
  sellerId: string | null;
  sellerName: string | null;
  startedAt: string;
  /** null where it was started from the command line */
  startedByName: string | null;
  /** contracts in all, dealt with, with an invoice, skipped */
  contracts: number;
  done: number;
  issued: number;
  skipped: number;
  netCents: number;
  grossCents: number;
  isFinished: boolean;
  /** this server is at it now; one that is neither finished nor running waits to be continued */
  isRunning: boolean;
}

export interface RunLineView {
  id: string;
  contractId: string;
  contractNumber: string | null;
  contractTitle: string;
  sponsorName: string;
  sellerName: string;
  outcome: 'issued' | 'skipped';
  invoiceId: string | null;
  invoiceNumber: string | null;
  netCents: number;
  grossCents: number;
  why: string;
}

export interface WholeBillingRunView extends BillingRunView {
  lines: RunLineView[];
  totals: SellerTotal[];
}
