/** Where reads stand; whole counts. */
export interface ReadStanding {
  promised: number;
  owed: number;
  given: number;
  madeGood: number;
  credited: number;
  released: number;
  carried: number;
  extra: number;
  behind: number;
  loggedNotSignedOff: number;
}

export interface Standing extends ReadStanding {
  billedCents: number;
  toBillCents: number;
  earnedCents: number;
  receivableCents: number;
}

export interface Commitment {
  id?: string;
  place: number;
  readKindId: string;
  readKindName?: string;
  counting: 'perTerm' | 'perGame' | 'perNight' | 'onOccurrence';
  reads: number;
  readsAtLeast: number | null;
  readsAtMost: number | null;
  whose: 'ours' | 'both';
  severalCountAsOne: boolean;
  rateCents: number;
  priceEachCents: number | null;
  startsOn: string | null;
  endsOn: string | null;
  teamIds: string[];
  levels: string[];
  leastPerGame: number | null;
  mostPerGame: number | null;
  separationMinutes: number | null;
  priority: number;
  standing?: ReadStanding;
}

export interface Benefit {
  id?: string;
  place: number;
  name: string;
  quantity: number;
  rateCents: number;
  fairValueCents: number | null;
  earns: 'onDelivery' | 'overDays';
  startsOn: string | null;
  endsOn: string | null;
  dueOn: string | null;
  delivered?: number;
}

export type BillingPlan =
  | { kind: 'inFull'; on: string }
  | { kind: 'installments'; installments: { on: string; share: number }[] }
  | { kind: 'perReadInArrears' }
  | { kind: 'depositAndArrears'; depositCents: number; depositOn: string };

export interface Term {
  id: string;
  version: number;
  number: number;
  seasonId: string;
  startsOn: string;
  endsOn: string;
  pricing: 'fixed' | 'perRead';
  priceCents: number;
  billAtLeastCents: number | null;
  billAtMostCents: number | null;
  billingPlan: BillingPlan;
  signedOn: string | null;
  signedByName: string | null;
  state: 'draft' | 'signed' | 'ended' | 'closed';
}

export interface Contract {
  id: string;
  version: number;
  number: string | null;
  sponsorId: string;
  sponsorName: string;
  sellerId: string;
  sellerName: string;
  payerId: string;
  payerName: string;
  title: string;
  purchaseOrderNumber: string | null;
  cancelledGamePolicy: 'credit' | 'valueMovesOn';
  isInKind: boolean;
  categoryException: string | null;
  categoryExceptionApprovedBy: string | null;
  outsideId: string | null;
  note: string | null;
  term: Term;
  commitments?: Commitment[];
  benefits?: Benefit[];
  standing?: Standing;
}
