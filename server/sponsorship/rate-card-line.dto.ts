import { PartialType } from '@nestjs/swagger';
import { CentsField, IdField, OptionalTextField } from '../platform/http/fields.ts';
import { ListQuery } from '../platform/http/lists.ts';
import { MOST_RATE_CENTS } from './amounts.ts';

export class RateCardLineDto {
  @IdField() seasonId: string;
  @IdField({ optional: true, nullable: true }) readKindId?: string | null;
  @OptionalTextField(120) benefitName?: string | null;
  @CentsField({ most: MOST_RATE_CENTS }) priceCents: number;
}

export class ChangeRateCardLineDto extends PartialType(RateCardLineDto) {}

export class RateCardLineListQuery extends ListQuery {
  @IdField({ optional: true }) seasonId?: string;
  @IdField({ optional: true }) readKindId?: string;
}

export interface RateCardLineView {
  id: string;
  seasonId: string;
  seasonName: string;
  readKindId: string | null;
  readKindName: string | null;
  benefitName: string | null;
  priceCents: number;
  version: number;
}
