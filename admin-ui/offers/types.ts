export type {
  OfferView as Offer,
  OfferedBenefit,
  OfferedRead,
} from '../../server/sponsorship/offers/offer-view.ts';
export type { OfferedLine } from '../../server/domain/sponsorship/offers/offered-values.ts';
