import type { Day } from '../day.ts';
import { refuse } from '../refusals.ts';

/** What a sponsor's own page says of the last contact and the next. */
export interface Prospect {
  readonly lastContactOn: Day | null;
  readonly nextStep: string | null;
  readonly nextStepOn: Day | null;
}

/** A contact as it is written down. */
export interface Contact {
  readonly contactedOn: Day;
  readonly nextStep: string | null;
  readonly nextStepOn: Day | null;
}

/**
 * Where a sponsor stands after a contact. The step that was due is done with it, so the new one takes its place, or none.
 * A contact written down late, after a later one, leaves the next step alone unless it names one.
 *
 * @param today the day in the department's zone
 * @throws Refused `contact-after-today`, `next-step-before-contact`
 */
export function afterContact(prospect: Prospect, contact: Contact, today: Day): Prospect {
  if (contact.contactedOn > today) refuse('contact-after-today');
  if (contact.nextStepOn !== null && contact.nextStepOn < contact.contactedOn) refuse('next-step-before-contact');
  const { lastContactOn } = prospect;
  const isLatest = lastContactOn === null || contact.contactedOn >= lastContactOn;
  const namesStep = contact.nextStep !== null || contact.nextStepOn !== null;
  return {
    lastContactOn: isLatest ? contact.contactedOn : lastContactOn,
    nextStep: isLatest || namesStep ? contact.nextStep : prospect.nextStep,
    nextStepOn: isLatest || namesStep ? contact.nextStepOn : prospect.nextStepOn,
  };
}
