import type { OpenItemsFigures } from '../billing/open-items/open-items.dto.ts';
import type { NightView } from '../season/night.dto.ts';

export interface BehindView {
  contractId: string;
  contractTitle: string;
  sponsorName: string;
  commitmentId: string;
  readKindName: string;
  promised: number;
  given: number;
  owed: number;
  expectedByNow: number;
  behindBy: number;
}

/** A contract on hold: its reads stay owed and are not planned. */
export interface HeldView {
  contractId: string;
  contractTitle: string;
  sponsorName: string;
  heldOn: string;
  reason: string;
  owed: number;
}

export interface UnpaidView {
  invoiceId: string;
  number: string;
  sponsorName: string;
  balanceCents: number;
  dueOn: string;
  /** above zero when the due day has passed */
  daysPastDue: number;
}

export interface RecentView {
  at: string;
  who: string | null;
  sentence: string;
  link: { resource: 'nights' | 'invoices' | 'payments' | 'contracts' | 'games'; id: string };
}

/** Sums over all signed contracts; the amounts are null for those who do not see money. */
export interface HomeFigures {
  signedCents: number | null;
  earnedCents: number | null;
  billedCents: number | null;
  receivableCents: number | null;
  promisedReads: number;
  givenReads: number;
  owedReads: number;
  loggedNotSignedOff: number;
}

export interface AskedView {
  disputeId: string;
  sponsorName: string;
  readKindName: string;
  heldOn: string;
  what: string;
}

/** What waits of makegoods and statements, as counts. */
export interface HomeProof {
  /** proposals that sponsors see and have not answered */
  answersWaiting: number;
  /** of those, past the day by which an answer was asked for */
  answersLate: number;
  /** terms that are over or nearly, without a statement of performance */
  statementsToIssue: number;
}

export interface HomeView {
  today: string;
  nights: NightView[];
  behind: BehindView[];
  held: HeldView[];
  /** what sponsors asked about reads and nobody answered yet, the latest first */
  asked: AskedView[];
  unpaid: UnpaidView[];
  recent: RecentView[];
  figures: HomeFigures;
  /** null for those who do not see money */
  openMoney: OpenItemsFigures | null;
  /** null for those who do not see contracts */
  proof: HomeProof | null;
}
