export type { LinkView as SponsorLink, NewLinkView as NewSponsorLink } from '../../server/access/link.dto.ts';
