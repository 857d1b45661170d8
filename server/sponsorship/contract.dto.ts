import { OmitType, PartialType } from '@nestjs/swagger';
import type { Pricing, CancelledGamePolicy } from '../domain/sponsorship/contract-terms.ts';
import { CentsField, ChoiceField, CountField, DayField, FlagField, IdField, ListOf, OptionalTextField, RecordField, TextField } from '../platform/http/fields.ts';
import { ListQuery, QueryFlag } from '../platform/http/lists.ts';
import { MOST_CENTS, MOST_READS } from './amounts.ts';
import { BillingPlanDto } from './billing-plan.dto.ts';
import { CompanyExceptionDto, ExclusivityDto } from './company/company.dto.ts';
import { BenefitDto, CommitmentDto } from './contract-line.dto.ts';

const OPEN = { optional: true, nullable: true };

export class TermDto {
  @IdField() seasonId: string;
  @DayField() startsOn: string;
  @DayField() endsOn: string;
  @ChoiceField(['fixed', 'perRead'], { optional: true }) pricing?: Pricing;
  @CentsField({ most: MOST_CENTS }) priceCents: number;
  @CentsField({ most: MOST_CENTS }, OPEN) billAtLeastCents?: number | null;
  @CentsField({ most: MOST_CENTS }, OPEN) billAtMostCents?: number | null;
  @RecordField(() => BillingPlanDto) billingPlan: BillingPlanDto;
}

export class ChangeTermDto extends PartialType(TermDto) {}

export class ContractDto {
  @IdField({ optional: true }) id?: string;
  @IdField() sponsorId: string;
  @IdField() sellerId: string;
  @IdField() payerId: string;
  @TextField(1, 120) title: string;
  @OptionalTextField(60) purchaseOrderNumber?: string | null;
  @ChoiceField(['credit', 'valueMovesOn'], { optional: true }) cancelledGamePolicy?: CancelledGamePolicy;
  @FlagField({ optional: true }) isInKind?: boolean;
  @OptionalTextField(500) categoryException?: string | null;
  @OptionalTextField(120) categoryExceptionApprovedBy?: string | null;
  @OptionalTextField(60) outsideId?: string | null;
  @OptionalTextField(2000) note?: string | null;
  @RecordField(() => TermDto) term: TermDto;
  @ListOf(() => CommitmentDto, { most: 100 }, { optional: true }) commitments?: CommitmentDto[];
  @ListOf(() => BenefitDto, { most: 100 }, { optional: true }) benefits?: BenefitDto[];
  /** whose only sponsor of a category this one is to be, and where */
  @ListOf(() => ExclusivityDto, { most: 20 }, { optional: true }) exclusivities?: ExclusivityDto[];
}

export class ChangeContractDto extends PartialType(OmitType(ContractDto, ['id', 'term'] as const)) {
  @RecordField(() => ChangeTermDto, { optional: true }) term?: ChangeTermDto;
}

export class ContractListQuery extends ListQuery {
  @IdField({ optional: true }) sponsorId?: string;
  @IdField({ optional: true }) sellerId?: string;
  @IdField({ optional: true }) payerId?: string;
  @IdField({ optional: true }) seasonId?: string;
  @ChoiceField(['draft', 'signed', 'ended', 'closed'], { optional: true }) state?: string;
  @QueryFlag() behind?: boolean;
}

export class SignContractDto {
  @DayField() signedOn: string;
  @TextField(1, 120) signedByName: string;
  /** why a blocked category is let through this once, and who said so */
  @OptionalTextField(500) categoryException?: string | null;
  @OptionalTextField(120) categoryExceptionApprovedBy?: string | null;
  /** whose right is gone past this once, and who said so */
  @RecordField(() => CompanyExceptionDto, { optional: true, nullable: true }) companyException?: CompanyExceptionDto | null;
}

export class DeliveryDto {
  @DayField() deliveredOn: string;
  @CountField(1, MOST_READS) quantity: number;
  @TextField(1, 500) proof: string;
}

export class GoodsDto {
  @DayField() receivedOn: string;
  @TextField(1, 200) what: string;
  @CentsField({ least: 1, most: MOST_CENTS }) amountCents: number;
}

export class EarnedThroughDto {
  @DayField() throughOn: string;
}
