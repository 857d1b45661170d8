export type { SponsorPageView as SponsorPage, WordsOfSponsor } from '../../server/sponsorship/sponsor-page.dto.ts';
