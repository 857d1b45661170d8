import { ChoiceField, IdField } from '../../platform/http/fields.ts';
import { ListQuery } from '../../platform/http/lists.ts';
import type { ApplicationView } from '../payments/payment.dto.ts';

/** `open`: part of its credit is still to be used. */
export type CreditMemoState = 'open' | 'used';

export class CreditMemoListQuery extends ListQuery {
  @ChoiceField(['open', 'used'], { optional: true }) state?: CreditMemoState;
  @IdField({ optional: true }) sellerId?: string;
  @IdField({ optional: true }) payerId?: string;
  @IdField({ optional: true }) sponsorId?: string;
  @IdField({ optional: true }) contractId?: string;
  /** memos that credit this invoice, or are applied to it */
  @IdField({ optional: true }) invoiceId?: string;
}

export interface CreditMemoView {
  id: string;
  number: string;
  sellerId: string;
  sellerName: string;
  payerId: string;
  payerName: string;
  sponsorId: string | null;
  sponsorName: string | null;
  contractId: string | null;
  contractNumber: string | null;
  contractTitle: string | null;
  issuedOn: string;
  reason: string | null;
  netCents: number;
  taxCents: number;
  grossCents: number;
  appliedCents: number;
  refundedCents: number;
  unappliedCents: number;
  state: CreditMemoState;
  recordedAt: string;
}

export interface CreditMemoLineView {
  id: string;
  place: number;
  description: string;
  quantity: number;
  unitCents: number | null;
  amountCents: number;
  taxCents: number;
  invoiceId: string | null;
  invoiceNumber: string | null;
}

export interface WholeCreditMemoView extends CreditMemoView {
  lines: CreditMemoLineView[];
  applications: ApplicationView[];
}
