import type { BillingPlan } from '../../domain/billing/billing-plan.ts';
import type { Day } from '../../domain/day.ts';
import type { CancelledGamePolicy, PriceVariesWith, Pricing } from '../../domain/sponsorship/contract-terms.ts';
import type { OfferState } from '../../domain/sponsorship/offers/offer-moves.ts';
import type { OfferedLine } from '../../domain/sponsorship/offers/offered-values.ts';
import type { CommitmentRow, BenefitView } from '../contract-view.ts';

/** A read that is offered, in the words of a commitment. */
export type OfferedRead = Omit<CommitmentRow, 'contractId'> & { offerId: string };

/** Another benefit that is offered. */
export type OfferedBenefit = Omit<BenefitView, 'contractId' | 'delivered'> & { offerId: string };

export interface OfferedExclusivity {
  id: string;
  categoryId: string;
  categoryName: string;
  reach: 'season' | 'game' | 'window';
  schoolId: string | null;
  schoolName: string | null;
  startsOn: Day;
  endsOn: Day;
  gameIds: string[];
  windowKinds: string[];
}

export interface OfferedException {
  id: string;
  exclusivityId: string | null;
  reservedCategoryId: string | null;
  blockedCategoryId: string | null;
  reason: string;
  approvedByName: string;
  approvedOn: Day;
}

export interface OfferRow {
  id: string;
  number: string | null;
  sponsorId: string;
  sponsorName: string;
  categoryId: string;
  categoryName: string;
  sellerId: string;
  sellerName: string;
  payerId: string | null;
  payerName: string | null;
  seasonId: string;
  seasonName: string;
  packageId: string | null;
  packageName: string | null;
  title: string;
  pricing: Pricing;
  priceCents: number;
  billAtLeastCents: number | null;
  billAtMostCents: number | null;
  priceVariesWith: PriceVariesWith;
  cancelledGamePolicy: CancelledGamePolicy;
  billingPlan: BillingPlan;
  startsOn: Day;
  endsOn: Day;
  years: number;
  increaseBasisPoints: number;
  lapsesOn: Day;
  holdsInventory: boolean;
  putOn: Day | null;
  beyondPlacesReason: string | null;
  beyondPlacesPersonName: string | null;
  declinedOn: Day | null;
  declinedReason: string | null;
  withdrawnOn: Day | null;
  contractId: string | null;
  contractNumber: string | null;
  note: string | null;
  state: OfferState;
  /** it holds places now: put, neither over nor signed, and meant to hold */
  holdsNow: boolean;
  /** days until it lapses, the last day counted as 0; null where it is not open */
  lapsesInDays: number | null;
  version: number;
}

export interface OfferView extends OfferRow {
  readLines: OfferedRead[];
  benefitLines: OfferedBenefit[];
  exclusivities: OfferedExclusivity[];
  exceptions: OfferedException[];
  /** the price of each year, the first first */
  pricesOfYears: number[];
  /** only where one offer is asked for: what each line is worth as it will be credited */
  values?: OfferedLine[];
  /** why the price cannot be shared over the lines yet */
  valuesTrouble?: { code: string; sentence: string } | null;
}
