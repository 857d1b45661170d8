import { CentsField, DayField, IdField, TextField } from '../../platform/http/fields.ts';
import { MOST_CENTS } from '../../sponsorship/amounts.ts';

export class ChargeDto {
  @IdField() payerId: string;
  @IdField() sellerId: string;
  /** the contract it has to do with, where there is one */
  @IdField({ optional: true, nullable: true }) contractId?: string | null;
  @TextField(1, 200) description: string;
  @CentsField({ least: 1, most: MOST_CENTS }) amountCents: number;
  /** without it, today */
  @DayField({ optional: true, nullable: true }) issuedOn?: string | null;
}
