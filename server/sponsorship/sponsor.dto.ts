import { PartialType } from '@nestjs/swagger';
import { ChoiceField, DayField, EmailField, IdField, OptionalTextField, TextField } from '../platform/http/fields.ts';
import { ListQuery, QueryFlag } from '../platform/http/lists.ts';
import type { SponsorStatus } from './sponsor.entity.ts';

const STATUSES = ['prospect', 'active', 'past'];

export class SponsorDto {
  @TextField(1, 120) name: string;
  @OptionalTextField(120) sayAs?: string | null;
  @IdField() categoryId: string;
  @ChoiceField(STATUSES, { optional: true }) status?: SponsorStatus;
  @OptionalTextField(120) contactName?: string | null;
  @EmailField({ optional: true, nullable: true }) email?: string | null;
  @OptionalTextField(40) phone?: string | null;
  @OptionalTextField(400) address?: string | null;
  @DayField({ optional: true, nullable: true }) lastContactOn?: string | null;
  @OptionalTextField(400) nextStep?: string | null;
  @DayField({ optional: true, nullable: true }) nextStepOn?: string | null;
  @IdField({ optional: true, nullable: true, description: 'Whose call it is: a person of the department' }) callerPersonId?: string | null;
  @OptionalTextField(2000) note?: string | null;
  @OptionalTextField(60) outsideId?: string | null;
}

export class ChangeSponsorDto extends PartialType(SponsorDto) {}

export class SponsorListQuery extends ListQuery {
  @IdField({ optional: true }) categoryId?: string;
  @ChoiceField(STATUSES, { optional: true }) status?: SponsorStatus;
  @IdField({ optional: true }) callerPersonId?: string;
  @QueryFlag() isLost?: boolean;
}

export interface SponsorView {
  id: string;
  name: string;
  sayAs: string | null;
  categoryId: string;
  categoryName: string;
  status: SponsorStatus;
  contactName: string | null;
  email: string | null;
  phone: string | null;
  address: string | null;
  lastContactOn: string | null;
  nextStep: string | null;
  nextStepOn: string | null;
  /** whose call it is */
  callerPersonId: string | null;
  callerName: string | null;
  lostOn: string | null;
  lostReason: string | null;
  note: string | null;
  outsideId: string | null;
  /** how many contracts it has or had */
  contracts: number;
  version: number;
}
