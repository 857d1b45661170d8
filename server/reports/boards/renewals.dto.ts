import type { Day } from '../../domain/day.ts';
import type { NextPackage } from '../../domain/reports/next-package.ts';
import type { WhatFollows } from '../../domain/reports/what-follows.ts';
import { FORMATS } from '../../platform/files/file-answer.ts';
import type { ReportFormat } from '../../platform/files/file-answer.ts';
import { ChoiceField, IdField } from '../../platform/http/fields.ts';
import { QueryFlag } from '../../platform/http/lists.ts';
import type { TermState } from '../../sponsorship/contract-view.ts';

export class RenewalsQuery {
  /** without it, the season that is on or was last */
  @IdField({ optional: true }) seasonId?: string;
  @IdField({ optional: true, description: 'Whose calls' }) callerPersonId?: string;
  @QueryFlag() isNobodys?: boolean;
  /** for the screen, or a file for a spreadsheet */
  @ChoiceField(FORMATS, { optional: true }) as?: ReportFormat;
}

export const PAID_STATES = ['paid', 'notBilled', 'open', 'overdue'] as const;
export type PaidState = (typeof PAID_STATES)[number];

/** What the form of a new offer begins with. */
export interface OfferStart {
  title: string;
  sponsorId: string;
  sellerId: string;
  payerId: string;
  seasonId?: string;
  pricing: 'fixed' | 'perRead';
  priceCents: number;
  readLines: Record<string, unknown>[];
  benefitLines: Record<string, unknown>[];
}

export interface RenewalRow {
  contractId: string;
  number: string | null;
  title: string;
  sponsorId: string;
  sponsorName: string;
  isInKind: boolean;
  state: TermState;
  endsOn: Day;
  /** with all changes; what was earned where it is priced by the read */
  priceCents: number;
  promised: number;
  given: number;
  madeGood: number;
  credited: number;
  owed: number;
  paid: PaidState;
  openCents: number;
  overdueCents: number;
  toBillCents: number;
  contactName: string | null;
  lastContactOn: Day | null;
  nextStep: string | null;
  nextStepOn: Day | null;
  callerPersonId: string | null;
  callerName: string | null;
  follows: WhatFollows;
  suggestion: NextPackage;
  offer: OfferStart;
}

export interface RenewalsView {
  seasonId: string | null;
  seasonName: string | null;
  /** the season for which one sells now; null while it is not there yet */
  nextSeasonId: string | null;
  nextSeasonName: string | null;
  /** the last day of the season lies behind */
  isOver: boolean;
  today: Day;
  /** the greatest price first */
  rows: RenewalRow[];
  priceCents: number;
  suggestedCents: number;
  /** last term's price of those that go on: signed again, or carried on */
  keptCents: number;
  seasons: { id: string; name: string }[];
  callers: { personId: string; name: string }[];
}
