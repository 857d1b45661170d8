import { CentsField, ChoiceField, CountField, DayField, OptionalTextField, TextField } from '../../platform/http/fields.ts';
import { MOST_CENTS } from '../../sponsorship/amounts.ts';
import type { PaymentMethod } from '../payments/payment.entity.ts';

const OPEN = { optional: true, nullable: true };

export class AskWriteOffDto {
  @CentsField({ least: 1, most: MOST_CENTS }) amountCents: number;
  @TextField(1, 500) reason: string;
}

export class ApproveWriteOffDto {
  /** without it, today */
  @DayField(OPEN) on?: string | null;
  /** without it, the reason it was asked for */
  @OptionalTextField(500) reason?: string | null;
}

export class DeclineWriteOffDto {
  /** without it, today */
  @DayField(OPEN) on?: string | null;
  @TextField(1, 500) reason: string;
}

export class RecoverDto {
  @CentsField({ least: 1, most: MOST_CENTS }) amountCents: number;
  @DayField() recoveredOn: string;
  @TextField(1, 500) reason: string;
  /** how the money came in: it is then recorded as a payment and applied to the invoice at once */
  @ChoiceField(['cash', 'check', 'card', 'transfer'], OPEN) method?: Exclude<PaymentMethod, 'opening'> | null;
  @OptionalTextField(80) reference?: string | null;
}

export class DiscountDto {
  /** share of the net, 200 is 2 %; or the amount instead */
  @CountField(1, 10_000, OPEN) basisPoints?: number | null;
  @CentsField({ least: 1, most: MOST_CENTS }, OPEN) amountCents?: number | null;
  /** what of the tax is given back with it; left out, the tax stays as it is */
  @CentsField({ most: MOST_CENTS }, { optional: true }) taxCents?: number;
  @DayField() takenOn: string;
  @TextField(1, 500) reason: string;
}

/** A request for a write-off that nobody answered yet. */
export interface WaitingWriteOffView {
  id: string;
  invoiceId: string;
  invoiceNumber: string;
  sponsorName: string;
  amountCents: number;
  balanceCents: number;
  askedOn: string;
  askedByPersonId: string | null;
  askedBy: string | null;
  reason: string;
}
