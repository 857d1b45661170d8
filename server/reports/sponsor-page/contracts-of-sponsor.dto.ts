import type { Counting, Pricing } from '../../domain/sponsorship/contract-terms.ts';
import type { Day } from '../../domain/day.ts';
import type { TermState } from '../../sponsorship/contract-view.ts';

/** Reads as a sponsor counts them. Promised is given, made good, credited, no longer due, carried over and still to come. */
export interface ReadsOfSponsor {
  promised: number;
  given: number;
  madeGood: number;
  credited: number;
  /** released: its value moved to other reads, or it was given up */
  noLongerDue: number;
  /** moved into the next contract */
  carriedOver: number;
  /** reads that came over from the contract before */
  cameOver: number;
  stillToCome: number;
  /** beyond the promise, as a gift */
  extra: number;
  /** heard at the table, and not confirmed by the school yet */
  notConfirmed: number;
}

export interface LineOfSponsor extends ReadsOfSponsor {
  commitmentId: string;
  readKindName: string;
  counting: Counting;
  /** on games to come */
  planned: number;
  gamesInAll: number;
  gamesPlayed: number;
}

/** A benefit that is no read: a banner, a page of the program. */
export interface BenefitOfSponsor {
  benefitId: string;
  name: string;
  quantity: number;
  delivered: number;
  dueOn: Day | null;
  earns: 'onDelivery' | 'overDays';
  /** its days, where it is there over days */
  startsOn: Day | null;
  endsOn: Day | null;
  deliveries: { deliveredOn: Day; quantity: number; proof: string }[];
}

export interface ContractOfSponsor {
  contractId: string;
  number: string | null;
  title: string;
  seasonId: string;
  seasonName: string;
  sellerName: string;
  startsOn: Day;
  endsOn: Day;
  state: TermState;
  pricing: Pricing;
  isInKind: boolean;
  /** false where the seller bills from books of its own, which are not here */
  isInvoicedHere: boolean;
  /** as it stands: what was amended, credited or let off is in it */
  priceCents: number;
  /** of the price, not on an invoice yet; below zero is more than agreed */
  stillToInvoiceCents: number;
  sum: ReadsOfSponsor;
  lines: LineOfSponsor[];
  benefits: BenefitOfSponsor[];
}
