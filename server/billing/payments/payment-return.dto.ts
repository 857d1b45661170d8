import { CentsField, ChoiceField, DayField, OptionalTextField, TextField } from '../../platform/http/fields.ts';
import { MOST_CENTS } from '../../sponsorship/amounts.ts';
import type { Refund } from './refund.entity.ts';

export class ReturnDto {
  @ChoiceField(['returned', 'mistake']) kind: 'returned' | 'mistake';
  @DayField() returnedOn: string;
  /** what the bank took; none for a mistake */
  @CentsField({ most: 100_000 }, { optional: true }) bankFeeCents?: number;
  @TextField(1, 500) reason: string;
  /** a fee passed on to the payer, as a charge of its own */
  @CentsField({ most: 100_000 }, { optional: true }) chargeCents?: number;
}

export class RefundDto {
  @CentsField({ least: 1, most: MOST_CENTS }) amountCents: number;
  @DayField() refundedOn: string;
  @ChoiceField(['cash', 'check', 'card', 'transfer']) method: Refund['method'];
  @OptionalTextField(80) reference?: string | null;
}
