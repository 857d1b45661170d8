import { DayField, IdField, OptionalTextField, RecordField, TextField } from '../../platform/http/fields.ts';
import { CompanyExceptionDto } from '../company/company.dto.ts';

const OPEN = { optional: true, nullable: true };

export class DeclineOfferDto {
  @TextField(1, 500) reason: string;
  /** left out: today */
  @DayField(OPEN) declinedOn?: string | null;
}

export class ExtendOfferDto {
  @DayField() lapsesOn: string;
}

export class DraftContractDto {
  /** left out: the offer's, or the sponsor's only payer */
  @IdField(OPEN) payerId?: string | null;
  @OptionalTextField(60) purchaseOrderNumber?: string | null;
  /** why an offer that has lapsed is taken up all the same */
  @OptionalTextField(300) overrideReason?: string | null;
}

export class AcceptOfferDto extends DraftContractDto {
  @DayField() signedOn: string;
  @TextField(1, 120) signedByName: string;
  /** why a blocked category is let through this once, and who said so */
  @OptionalTextField(500) categoryException?: string | null;
  @OptionalTextField(120) categoryExceptionApprovedBy?: string | null;
  /** whose right is gone past this once, and who said so */
  @RecordField(() => CompanyExceptionDto, { optional: true, nullable: true }) companyException?: CompanyExceptionDto | null;
}
