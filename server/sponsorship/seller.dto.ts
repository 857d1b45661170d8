import { PartialType } from '@nestjs/swagger';
import { CountField, EmailField, FlagField, OptionalTextField, PatternField, TextField } from '../platform/http/fields.ts';
import { ListQuery } from '../platform/http/lists.ts';

export class SellerDto {
  @TextField(1, 120) name: string;
  @PatternField(/^[A-Z0-9]{1,6}$/, 'has one to six capital letters or digits') numberPrefix: string;
  @OptionalTextField(400) address?: string | null;
  @OptionalTextField(400) remitTo?: string | null;
  @OptionalTextField(60) taxIdentity?: string | null;
  @OptionalTextField(120) contactName?: string | null;
  @EmailField({ optional: true, nullable: true }) contactEmail?: string | null;
  @OptionalTextField(40) contactPhone?: string | null;
  @CountField(0, 10_000, { optional: true }) taxBasisPoints?: number;
  @CountField(0, 365, { optional: true }) termsDays?: number;
  @FlagField({ optional: true }) keepsBooksHere?: boolean;
}

export class ChangeSellerDto extends PartialType(SellerDto) {}

export class SellerListQuery extends ListQuery {}

export interface SellerView {
  id: string;
  name: string;
  numberPrefix: string;
  address: string | null;
  remitTo: string | null;
  taxIdentity: string | null;
  contactName: string | null;
  contactEmail: string | null;
  contactPhone: string | null;
  taxBasisPoints: number;
  termsDays: number;
  keepsBooksHere: boolean;
  version: number;
}
