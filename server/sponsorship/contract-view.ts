import type { CompanyExceptionView, ExclusivityView } from './company/company.dto.ts';
import type { BillingPlan } from '../domain/billing/billing-plan.ts';
import type { CancelledGamePolicy, Counting, PriceVariesWith, Pricing } from '../domain/sponsorship/contract-terms.ts';
import type { FollowsAs } from '../domain/sponsorship/rollover/lines-followed.ts';
import type { Standing } from '../domain/sponsorship/standing.ts';
import type { Day } from '../domain/day.ts';
import type { Level } from '../domain/season/game.ts';
import type { WindowKind } from '../domain/season/sport-profile.ts';
import type { Separation } from '../domain/sponsorship/separation.ts';

export type TermState = 'draft' | 'signed' | 'ended' | 'closed';

export interface TermView {
  id: string;
  number: number;
  seasonId: string;
  seasonName: string;
  startsOn: Day;
  endsOn: Day;
  pricing: Pricing;
  priceCents: number;
  billAtLeastCents: number | null;
  billAtMostCents: number | null;
  billingPlan: BillingPlan;
  signedOn: Day | null;
  signedByName: string | null;
  endedOn: Day | null;
  closedOn: Day | null;
  state: TermState;
  version: number;
}

/** A commitment's columns as a view shows them. */
export interface CommitmentRow {
  id: string;
  contractId: string;
  place: number;
  readKindId: string;
  readKindName: string;
  counting: Counting;
  reads: number;
  readsAtLeast: number | null;
  readsAtMost: number | null;
  whose: 'ours' | 'both';
  severalCountAsOne: boolean;
  rateCents: number;
  priceEachCents: number | null;
  isTaxed: boolean;
  startsOn: Day | null;
  endsOn: Day | null;
  teamIds: string[];
  levels: Level[];
  leastPerGame: number | null;
  mostPerGame: number | null;
  separation: Separation;
  windowKinds: WindowKind[];
  blackoutDays: Day[];
  pinnedGameIds: string[];
  priority: number;
}

export interface CommitmentView extends CommitmentRow {
  standing: Standing;
}

export interface BenefitView {
  id: string;
  contractId: string;
  place: number;
  name: string;
  quantity: number;
  rateCents: number;
  fairValueCents: number | null;
  isTaxed: boolean;
  earns: 'onDelivery' | 'overDays';
  startsOn: Day | null;
  endsOn: Day | null;
  dueOn: Day | null;
  /** pieces delivered so far */
  delivered: number;
}

/** Where a contract stands both ways: reads, and dollars in cents. All zero for a draft. */
export interface ContractStanding extends Standing {
  priceCents: number;
  billedCents: number;
  toBillCents: number;
  earnedCents: number;
  /** below zero: billed and not earned yet; above: earned and not billed yet */
  contractBalanceCents: number;
  receivableCents: number;
}

/** The columns of a contract with its term and names. */
export interface ContractRow {
  id: string;
  number: string | null;
  sponsorId: string;
  sponsorName: string;
  sellerId: string;
  sellerName: string;
  payerId: string;
  payerName: string;
  title: string;
  purchaseOrderNumber: string | null;
  cancelledGamePolicy: CancelledGamePolicy;
  /** how many years were agreed, and by how much each costs more than the one before, in hundredths of a percent */
  years: number;
  increaseBasisPoints: number;
  priceVariesWith: PriceVariesWith;
  isInKind: boolean;
  /** the contract that this one carries on (`year`) or renews, and which of the agreed years this is */
  followsContractId: string | null;
  followsContractNumber: string | null;
  followsAs: FollowsAs | null;
  yearNumber: number;
  /** the contract that carries this one on or renews it, a draft perhaps */
  followedByContractId: string | null;
  followedByContractNumber: string | null;
  followedByAs: FollowsAs | null;
  categoryException: string | null;
  categoryExceptionApprovedBy: string | null;
  outsideId: string | null;
  note: string | null;
  version: number;
  term: TermView;
  /** the hold that stands */
  hold: { heldOn: Day; reason: string } | null;
  /** the owners before, first to last */
  assignments: { assignedOn: Day; fromSponsorName: string; fromPayerName: string; reason: string }[];
  receivableCents: number;
}

export interface ContractView extends Omit<ContractRow, 'receivableCents'> {
  commitments: CommitmentView[];
  benefits: BenefitView[];
  exclusivities: ExclusivityView[];
  /** whose right was gone past, and who approved it */
  companyExceptions: CompanyExceptionView[];
  standing: ContractStanding;
}
