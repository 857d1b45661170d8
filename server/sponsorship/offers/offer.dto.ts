import { OmitType, PartialType } from '@nestjs/swagger';
import { PRICE_VARIES_WITH } from '../../domain/sponsorship/contract-terms.ts';
import type { CancelledGamePolicy, PriceVariesWith, Pricing } from '../../domain/sponsorship/contract-terms.ts';
import { OFFER_STATES } from '../../domain/sponsorship/offers/offer-moves.ts';
import type { OfferState } from '../../domain/sponsorship/offers/offer-moves.ts';
import { CentsField, ChoiceField, CountField, DayField, FlagField, IdField, ListOf, OptionalTextField, RecordField, TextField } from '../../platform/http/fields.ts';
import { ListQuery, QueryFlag } from '../../platform/http/lists.ts';
import { MOST_CENTS } from '../amounts.ts';
import { BillingPlanDto } from '../billing-plan.dto.ts';
import { ExclusivityDto } from '../company/company.dto.ts';
import { BenefitDto, CommitmentDto } from '../contract-line.dto.ts';

const OPEN = { optional: true, nullable: true };

export class OfferDto {
  @IdField({ optional: true }) id?: string;
  @IdField() sponsorId: string;
  @IdField() sellerId: string;
  @IdField(OPEN) payerId?: string | null;
  @IdField() seasonId: string;
  @IdField(OPEN) packageId?: string | null;
  @TextField(1, 120) title: string;
  @ChoiceField(['fixed', 'perRead'], { optional: true }) pricing?: Pricing;
  /** of the first year */
  @CentsField({ most: MOST_CENTS }) priceCents: number;
  @CentsField({ most: MOST_CENTS }, OPEN) billAtLeastCents?: number | null;
  @CentsField({ most: MOST_CENTS }, OPEN) billAtMostCents?: number | null;
  @ChoiceField(PRICE_VARIES_WITH, { optional: true }) priceVariesWith?: PriceVariesWith;
  @ChoiceField(['credit', 'valueMovesOn'], { optional: true }) cancelledGamePolicy?: CancelledGamePolicy;
  /** left out: in full on the first day */
  @RecordField(() => BillingPlanDto, { optional: true }) billingPlan?: BillingPlanDto;
  @DayField() startsOn: string;
  @DayField() endsOn: string;
  @CountField(1, 5, { optional: true }) years?: number;
  /** by which each year costs more than the one before, in hundredths of a percent */
  @CountField(0, 10_000, { optional: true }) increaseBasisPoints?: number;
  /** the last day on which it holds */
  @DayField() lapsesOn: string;
  @FlagField({ optional: true }) holdsInventory?: boolean;
  @OptionalTextField(2000) note?: string | null;
  @ListOf(() => CommitmentDto, { most: 100 }, { optional: true }) readLines?: CommitmentDto[];
  @ListOf(() => BenefitDto, { most: 100 }, { optional: true }) benefitLines?: BenefitDto[];
  @ListOf(() => ExclusivityDto, { most: 20 }, { optional: true }) exclusivities?: ExclusivityDto[];
}

export class ChangeOfferDto extends PartialType(OmitType(OfferDto, ['id'] as const)) {}

export class OfferListQuery extends ListQuery {
  @IdField({ optional: true }) sponsorId?: string;
  @IdField({ optional: true }) sellerId?: string;
  @IdField({ optional: true }) seasonId?: string;
  @ChoiceField(OFFER_STATES, { optional: true }) state?: OfferState;
  /** open, and the last day on which it holds is within a week */
  @QueryFlag() lapsesSoon?: boolean;
}

export class OfferPdfQuery {
  /** the department's own copy, with what the sponsor is not given */
  @QueryFlag() office?: boolean;
}
