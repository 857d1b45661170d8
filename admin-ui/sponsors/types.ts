export type { SponsorView as Sponsor } from '../../server/sponsorship/sponsor.dto.ts';
