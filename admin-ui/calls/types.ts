export type { CallsView, CallView } from '../../server/sponsorship/contacts/call.dto.ts';
export type { SponsorContactView as SponsorContact } from '../../server/sponsorship/contacts/sponsor-contact.dto.ts';
