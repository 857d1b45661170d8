import type { Day } from '../day.ts';
import { addDays, daysBetween } from '../day.ts';
import type { Cents } from '../money.ts';
import { centsOf } from '../money.ts';

/** By what an unpaid invoice ages: the days since it fell due, or the days since it was issued. */
export type AgingBasis = 'dueDay' | 'invoiceAge';

export interface AgingBucket {
  name: string;
  /** the oldest this bucket holds, in days; null holds everything older */
  throughDays: number | null;
}

/**
 * The columns of an aging, the youngest first.
 *
 * @source common practice (current, 1-30, 31-60, 61-90, over 90 days past due; 0-30 … by age of the invoice), no source
 */
export const AGING_BUCKETS: Readonly<Record<AgingBasis, readonly AgingBucket[]>> = {
  dueDay: [
    { name: 'Current', throughDays: 0 },
    { name: '1–30 days past due', throughDays: 30 },
    { name: '31–60 days past due', throughDays: 60 },
    { name: '61–90 days past due', throughDays: 90 },
    { name: 'Over 90 days past due', throughDays: null },
  ],
  invoiceAge: [
    { name: '0–30 days old', throughDays: 30 },
    { name: '31–60 days old', throughDays: 60 },
    { name: '61–90 days old', throughDays: 90 },
    { name: 'Over 90 days old', throughDays: null },
  ],
};

/** An unpaid document: what is open on it on the day of the aging, in cents. */
export interface OpenDocument {
  issuedOn: Day;
  dueOn: Day;
  balanceCents: number;
}

/** How old a document is on a day: days past due (zero or less while it is current), or days since it was issued. */
export function ageInDays(document: Pick<OpenDocument, 'issuedOn' | 'dueOn'>, on: Day, by: AgingBasis): number {
  return daysBetween(by === 'dueDay' ? document.dueOn : document.issuedOn, on);
}

/** The place, from 0, of the bucket a document lies in on a day. On the due day itself it is current. */
export function bucketOf(document: Pick<OpenDocument, 'issuedOn' | 'dueOn'>, on: Day, by: AgingBasis): number {
  return placeAmong(firstDaysOf(on, by), document, by);
}

/** The first day that still lies in each bucket; days compare as text, which thousands of documents can afford. */
function firstDaysOf(on: Day, by: AgingBasis): (Day | null)[] {
  return AGING_BUCKETS[by].map(({ throughDays }) => (throughDays === null ? null : addDays(on, -throughDays)));
}

function placeAmong(firstDays: readonly (Day | null)[], document: Pick<OpenDocument, 'issuedOn' | 'dueOn'>, by: AgingBasis): number {
  const counted = by === 'dueDay' ? document.dueOn : document.issuedOn;
  return firstDays.findIndex((first) => first === null || counted >= first);
}

/**
 * What is open by age: one amount for each bucket, in cents, and their sum.
 *
 * @param documents with what is open on each on that day; what is settled adds nothing
 */
export function agingOf(documents: Iterable<OpenDocument>, on: Day, by: AgingBasis): { bucketCents: Cents[]; totalCents: Cents } {
  const sums = AGING_BUCKETS[by].map(() => 0);
  const firstDays = firstDaysOf(on, by);
  for (const document of documents) sums[placeAmong(firstDays, document, by)]! += document.balanceCents;
  return { bucketCents: sums.map(centsOf), totalCents: centsOf(sums.reduce((sum, cents) => sum + cents, 0)) };
}
