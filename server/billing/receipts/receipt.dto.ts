import { CentsField, ChoiceField, DayField, IdField, OptionalTextField, TextField } from '../../platform/http/fields.ts';
import { ListQuery } from '../../platform/http/lists.ts';
import { MOST_CENTS } from '../../sponsorship/amounts.ts';

const TAKEN_BY = ['cash', 'check'];
const STATES = ['inTheDrawer', 'deposited', 'takenOut'];

export type ReceiptState = 'inTheDrawer' | 'deposited' | 'takenOut';

export class ReceiptDto {
  @IdField({ optional: true }) id?: string;
  @IdField() sellerId: string;
  @IdField() payerId: string;
  @TextField(1, 120) fromWhom: string;
  @DayField() takenOn: string;
  /** without it, the name of who writes the receipt */
  @OptionalTextField(120) takenByName?: string | null;
  @ChoiceField(TAKEN_BY) method: 'cash' | 'check';
  /** the number of the check */
  @OptionalTextField(80) reference?: string | null;
  @CentsField({ least: 1, most: MOST_CENTS }) amountCents: number;
  @OptionalTextField(200) whatFor?: string | null;
}

export class ReceiptListQuery extends ListQuery {
  @IdField({ optional: true }) sellerId?: string;
  @IdField({ optional: true }) payerId?: string;
  @ChoiceField(STATES, { optional: true }) state?: ReceiptState;
}

export interface ReceiptView {
  id: string;
  number: string;
  sellerId: string;
  sellerName: string;
  payerId: string;
  payerName: string;
  sponsorName: string | null;
  paymentId: string;
  paymentNumber: string;
  fromWhom: string;
  whatFor: string | null;
  takenOn: string;
  takenByName: string;
  method: 'cash' | 'check';
  reference: string | null;
  amountCents: number;
  state: ReceiptState;
  depositSlipId: string | null;
  depositSlipNumber: string | null;
  recordedAt: string;
}

/** Whom money may come from and for whom it may be taken. */
export interface ReceiptPartiesView {
  sellers: { id: string; name: string }[];
  payers: { id: string; name: string }[];
}

/** A payer, and how much of theirs is open with a seller. */
export interface OpenPayerView {
  id: string;
  name: string;
  sponsorName: string | null;
  openCount: number;
  openCents: number;
}
