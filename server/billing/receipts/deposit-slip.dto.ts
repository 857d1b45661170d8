import { CentsField, DayField, IdField, IdsField, OptionalTextField } from '../../platform/http/fields.ts';
import { ListQuery } from '../../platform/http/lists.ts';
import { MOST_CENTS } from '../../sponsorship/amounts.ts';

export const MOST_ON_A_SLIP = 500;

export class DepositSlipDto {
  @IdField({ optional: true }) id?: string;
  @IdField() sellerId: string;
  @DayField() depositedOn: string;
  @IdsField(MOST_ON_A_SLIP) paymentIds: string[];
  /** what was counted; nothing at all may have been there */
  @CentsField({ most: MOST_CENTS }) countedCents: number;
  /** needed where what was counted is not what was expected */
  @OptionalTextField(500) note?: string | null;
}

export class DepositSlipListQuery extends ListQuery {
  @IdField({ optional: true }) sellerId?: string;
}

export class DrawerQuery {
  @IdField({ optional: true }) sellerId?: string;
}

/** A payment that lies in the drawer. */
export interface DrawerLineView {
  /** of the payment */
  id: string;
  number: string;
  sellerId: string;
  sellerName: string;
  payerName: string;
  receivedOn: string;
  method: 'cash' | 'check';
  reference: string | null;
  amountCents: number;
  receiptId: string | null;
  receiptNumber: string | null;
  fromWhom: string | null;
  takenByName: string | null;
  takenByPersonId: string | null;
}

export interface DrawerView {
  /** the first of them */
  data: DrawerLineView[];
  /** how many there are, their sum and the oldest of them, shown or not */
  total: number;
  totalCents: number;
  oldestOn: string | null;
}

export interface DepositSlipView {
  id: string;
  number: string;
  sellerId: string;
  sellerName: string;
  depositedOn: string;
  expectedCents: number;
  countedCents: number;
  /** above zero is over, below is short */
  differenceCents: number;
  note: string | null;
  depositedByName: string | null;
  checkCount: number;
  checkCents: number;
  cashCents: number;
  recordedAt: string;
}

export interface DepositSlipLineView {
  paymentId: string;
  paymentNumber: string;
  receiptId: string | null;
  receiptNumber: string | null;
  payerName: string;
  receivedOn: string;
  method: 'cash' | 'check';
  reference: string | null;
  amountCents: number;
  takenByName: string | null;
}

export interface WholeDepositSlipView extends DepositSlipView {
  lines: DepositSlipLineView[];
}
