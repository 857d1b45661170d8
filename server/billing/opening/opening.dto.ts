import { CentsField, CountField, DayField, IdField, ListOf, OptionalTextField, RecordField } from '../../platform/http/fields.ts';
import { MOST_CENTS, MOST_READS } from '../../sponsorship/amounts.ts';
import { CompanyExceptionDto } from '../../sponsorship/company/company.dto.ts';

export class GivenBeforeDto {
  @IdField() commitmentId: string;
  @CountField(0, MOST_READS) given: number;
}

export class OpeningDto {
  @ListOf(() => GivenBeforeDto, { most: 100 }, { optional: true }) givenByCommitment?: GivenBeforeDto[];
  @CentsField({ most: MOST_CENTS }, { optional: true }) billedCents?: number;
  @CentsField({ most: MOST_CENTS }, { optional: true }) paidCents?: number;
  @DayField() asOf: string;
  /** without it, the day as of which it is taken over */
  @DayField({ optional: true, nullable: true }) signedOn?: string | null;
  @OptionalTextField(120) signedByName?: string | null;
  /** whose right is gone past this once, and who said so */
  @RecordField(() => CompanyExceptionDto, { optional: true, nullable: true }) companyException?: CompanyExceptionDto | null;
}
