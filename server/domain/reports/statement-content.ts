import type { Day } from '../day.ts';
import type { Counting } from '../sponsorship/contract-terms.ts';

/** Whose statement it is. What stands here may be renamed without the books having changed. */
export interface StatementHead {
  departmentName: string;
  schoolName: string;
  sellerName: string;
  /** who it was issued to: a contract may be handed on later */
  sponsorId: string;
  sponsorName: string;
  contractNumber: string | null;
  contractTitle: string;
  seasonName: string;
  /** the first and the last day of the term */
  startsOn: Day;
  endsOn: Day;
  /** the last day of which anything is said */
  throughOn: Day;
  locale: string;
  currency: string;
  paper: 'letter' | 'a4';
}

/** Where one promise of reads stands on the last day; all in reads. */
export interface StatementLine {
  commitmentId: string;
  name: string;
  counting: Counting;
  promised: number;
  given: number;
  madeGood: number;
  credited: number;
  released: number;
  carried: number;
  stillToCome: number;
  extra: number;
}

/** Reads that should have been given by the end of a day of games, and that were. */
export interface StatementPace {
  on: Day;
  expected: number;
  given: number;
}

export interface StatementBenefit {
  name: string;
  quantity: number;
  delivered: number;
  dueOn: Day | null;
  /** what is shown over days has nothing to deliver */
  shownFrom: Day | null;
  shownTo: Day | null;
  proofs: { on: Day; quantity: number; proof: string }[];
}

export type StatementOutcome = 'given' | 'extra' | 'makegood' | 'notRead' | 'cutShort' | 'takenBack';

/** One read as the log has it. Of those at the table a role or initials stand here, never a name. */
export interface StatementRead {
  readKindName: string;
  windowName: string | null;
  /** by the department's own clock, `19:42` */
  clock: string | null;
  copyTitle: string | null;
  copyVersionNumber: number | null;
  outcome: StatementOutcome;
  why: string | null;
  atTheTable: string | null;
  /** the day of the missed read that a makegood stands for */
  forMissedOn: Day | null;
}

export interface StatementNight {
  nightId: string;
  heldOn: Day;
  /** the opponent, or the game in words where there are several */
  opponent: string;
  attendance: number | null;
  attendanceHow: 'tickets' | 'counted' | 'estimated' | 'signOff' | null;
  reads: StatementRead[];
}

/** What was made good, credited, released or carried, in one sentence. */
export interface StatementChange {
  on: Day;
  sentence: string;
}

/** One line of the account; a balance is what is open on invoices less credit that is not applied yet. Whole cents. */
export interface StatementAccountLine {
  on: Day;
  sentence: string;
  chargeCents: number;
  creditCents: number;
  balanceCents: number;
}

/** One season's proof for one contract, as it was on the day it was made. It is stored as it stands and never changes. */
export interface StatementContent {
  head: StatementHead;
  lines: StatementLine[];
  pace: StatementPace[];
  benefits: StatementBenefit[];
  nights: StatementNight[];
  /** reads that are logged on nights nobody signed off; they are counted nowhere else here */
  notSignedOff: number;
  changes: StatementChange[];
  account: StatementAccountLine[];
}

/** Outcomes by which the words were heard in the gym. */
export const HEARD: readonly StatementOutcome[] = ['given', 'extra', 'makegood'];
