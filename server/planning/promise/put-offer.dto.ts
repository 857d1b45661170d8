import { DayField, OptionalTextField, RecordField } from '../../platform/http/fields.ts';
import { CompanyExceptionDto } from '../../sponsorship/company/company.dto.ts';

export class PutOfferDto {
  @DayField() putOn: string;
  /** why it is put although the season cannot carry it; kept with who said so */
  @OptionalTextField(500) beyondPlacesReason?: string | null;
  /** whose right is gone past this once, and who said so */
  @RecordField(() => CompanyExceptionDto, { optional: true, nullable: true }) companyException?: CompanyExceptionDto | null;
}
