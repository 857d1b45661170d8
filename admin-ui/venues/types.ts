export type { VenueView as Venue } from '../../server/season/venue.dto.ts';
