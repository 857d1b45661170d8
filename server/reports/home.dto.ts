import type { NightSummary } from './home-nights.ts';

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
  link: { resource: string; id: string } | null;
}

export interface HomeView {
  today: string;
  nights: NightSummary[];
  behind: BehindView[];
  unpaid: UnpaidView[];
  recent: RecentView[];
  figures: {
    signedCents: number;
    earnedCents: number;
    billedCents: number;
    receivableCents: number;
    promisedReads: number;
    givenReads: number;
    owedReads: number;
  };
}
