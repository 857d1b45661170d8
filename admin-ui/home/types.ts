import type { Night } from '../nights/types.ts';

export interface BehindLine {
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

export interface UnpaidLine {
  invoiceId: string;
  number: string;
  sponsorName: string;
  balanceCents: number;
  dueOn: string;
  daysPastDue: number;
}

export interface RecentLine {
  at: string;
  who: string | null;
  sentence: string;
  link: { resource: string; id: string } | null;
}

export interface Home {
  nights: Night[];
  behind: BehindLine[];
  unpaid: UnpaidLine[];
  recent: RecentLine[];
  figures: { signedCents: number; earnedCents: number; billedCents: number; receivableCents: number; owedReads: number; givenReads: number };
}
