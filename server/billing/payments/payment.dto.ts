import type { Drawer } from '../../domain/billing/payment.ts';
import { CentsField, ChoiceField, DayField, IdField, ListOf, OptionalTextField } from '../../platform/http/fields.ts';
import { ListQuery } from '../../platform/http/lists.ts';
import { MOST_CENTS } from '../../sponsorship/amounts.ts';
import type { PaymentMethod } from './payment.entity.ts';

const OPEN = { optional: true, nullable: true };
const METHODS = ['cash', 'check', 'card', 'transfer'];

export class ApplicationDto {
  @IdField() invoiceId: string;
  @CentsField({ least: 1, most: MOST_CENTS }) amountCents: number;
}

export class ApplyDto extends ApplicationDto {
  /** without it, today */
  @DayField(OPEN) appliedOn?: string | null;
}

export class TakeBackDto {
  /** without it, today */
  @DayField(OPEN) takenBackOn?: string | null;
}

export class PaymentDto {
  @IdField({ optional: true }) id?: string;
  @IdField() sellerId: string;
  @IdField() payerId: string;
  @DayField() receivedOn: string;
  @ChoiceField(METHODS) method: PaymentMethod;
  @OptionalTextField(80) reference?: string | null;
  @CentsField({ least: 1, most: MOST_CENTS }) amountCents: number;
  @OptionalTextField(500) note?: string | null;
  /** where the money lies: without it at the bank, or in the drawer until a deposit slip takes it there */
  @ChoiceField(['cash', 'undepositedReceipts'], { optional: true }) drawer?: Drawer;
  @ListOf(() => ApplicationDto, { most: 100 }, { optional: true }) applications?: ApplicationDto[];
}

export class PaymentListQuery extends ListQuery {
  @IdField({ optional: true }) sellerId?: string;
  @IdField({ optional: true }) payerId?: string;
  @IdField({ optional: true }) invoiceId?: string;
  @ChoiceField([...METHODS, 'opening'], { optional: true }) method?: PaymentMethod;
}

export interface ApplicationView {
  id: string;
  invoiceId: string;
  invoiceNumber: string;
  amountCents: number;
  appliedOn: string;
  /** the invoice's contract, if it is closed: it is open again once this is taken back */
  closedContract: string | null;
  takenBack: boolean;
}

export interface RefundView {
  id: string;
  amountCents: number;
  refundedOn: string;
  method: PaymentMethod;
  reference: string | null;
}

export interface PaymentView {
  id: string;
  number: string;
  sellerId: string;
  sellerName: string;
  payerId: string;
  payerName: string;
  /** the sponsor that the payer stands for */
  sponsorName: string | null;
  receivedOn: string;
  method: PaymentMethod;
  reference: string | null;
  amountCents: number;
  note: string | null;
  /** in the drawer until a deposit slip takes it to the bank */
  isInDrawer: boolean;
  receiptId: string | null;
  receiptNumber: string | null;
  /** who took it in and wrote the receipt: another deposits it, applies it and pays it back */
  takenByPersonId: string | null;
  depositSlipId: string | null;
  depositSlipNumber: string | null;
  appliedCents: number;
  refundedCents: number;
  unappliedCents: number;
  /** null while the payment stands */
  returnKind: 'returned' | 'mistake' | null;
  returnedOn: string | null;
  returnReason: string | null;
  bankFeeCents: number | null;
  /** what the payer was charged for the check that came back */
  chargeInvoiceId: string | null;
  chargeInvoiceNumber: string | null;
  refunds: RefundView[];
  recordedAt: string;
  applications: ApplicationView[];
}
