import type { Day } from '../../domain/day.ts';
import { ChoiceField, DayField, OptionalTextField, TextField } from '../../platform/http/fields.ts';
import { CONTACT_WAYS } from './sponsor-contact.entity.ts';
import type { ContactWay } from './sponsor-contact.entity.ts';

export class SponsorContactDto {
  @DayField() contactedOn: Day;
  @ChoiceField(CONTACT_WAYS) how: ContactWay;
  @OptionalTextField(120) withWhom?: string | null;
  @TextField(1, 2000) what: string;
  @OptionalTextField(400) nextStep?: string | null;
  @DayField({ optional: true, nullable: true }) nextStepOn?: Day | null;
}

export class LoseSponsorDto {
  @DayField() lostOn: Day;
  @TextField(1, 400) reason: string;
}

export interface SponsorContactView {
  id: string;
  sponsorId: string;
  contactedOn: string;
  how: ContactWay;
  withWhom: string | null;
  what: string;
  nextStep: string | null;
  nextStepOn: string | null;
  contactedByName: string | null;
  recordedAt: string;
}
