import { PartialType } from '@nestjs/swagger';
import { DayField, EmailField, IdField, OptionalTextField, TextField } from '../platform/http/fields.ts';
import { ListQuery } from '../platform/http/lists.ts';

export class PayerDto {
  @IdField({ optional: true, nullable: true }) sponsorId?: string | null;
  @TextField(1, 120) name: string;
  @EmailField({ optional: true, nullable: true }) email?: string | null;
  @OptionalTextField(400) address?: string | null;
  @OptionalTextField(60) exemptionNumber?: string | null;
  @DayField({ optional: true, nullable: true }) exemptionExpiresOn?: string | null;
}

export class ChangePayerDto extends PartialType(PayerDto) {}

export class PayerListQuery extends ListQuery {
  @IdField({ optional: true }) sponsorId?: string;
}

export interface PayerView {
  id: string;
  sponsorId: string | null;
  sponsorName: string | null;
  name: string;
  email: string | null;
  address: string | null;
  exemptionNumber: string | null;
  exemptionExpiresOn: string | null;
  version: number;
}
