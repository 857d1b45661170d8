import { DayField, OptionalTextField } from '../../platform/http/fields.ts';

export class PutOfferDto {
  @DayField() putOn: string;
  /** why it is put although the season cannot carry it; kept with who said so */
  @OptionalTextField(500) beyondPlacesReason?: string | null;
}
