import { PartialType } from '@nestjs/swagger';
import { CentsField, CountField, IdField, OptionalTextField } from '../platform/http/fields.ts';
import { ListQuery } from '../platform/http/lists.ts';
import { MOST_RATE_CENTS } from './amounts.ts';

export class RateCardLineDto {
  @IdField() seasonId: string;
  @IdField({ optional: true, nullable: true }) readKindId?: string | null;
  @OptionalTextField(120) benefitName?: string | null;
  @CentsField({ most: MOST_RATE_CENTS }) priceCents: number;
}

export class ChangeRateCardLineDto extends PartialType(RateCardLineDto) {}

export class CopyRateCardDto {
  @IdField() fromSeasonId: string;
  @IdField() toSeasonId: string;
  /** hundredths of a percent; 300 is 3 % */
  @CountField(0, 10_000, { optional: true }) increaseBasisPoints?: number;
}

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

export interface RateCardCopyView {
  copied: RateCardLineView[];
  /** what had a price already, and keeps it */
  left: { name: string; priceCents: number; code: 'rate-already-set'; sentence: string }[];
}
