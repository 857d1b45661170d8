import type { Day } from '../day.ts';
import { addDays, weekdayOf } from '../day.ts';

/** Why somebody should be called. */
export type CallReason =
  /** what was agreed comes next; without a day it waits for one */
  | { readonly kind: 'nextStep'; readonly on: Day | null; readonly text: string | null }
  /** an offer they have not answered; `on` is its last day */
  | { readonly kind: 'offerLapses'; readonly on: Day; readonly offerId: string; readonly title: string; readonly number: string | null }
  /** a contract that ends with nothing behind it; `on` is its last day */
  | { readonly kind: 'contractEnds'; readonly on: Day; readonly contractId: string; readonly title: string; readonly number: string | null };

/** What is known of a sponsor before the telephone is picked up. */
export interface CallFacts {
  readonly sponsorId: string;
  readonly sponsorName: string;
  readonly lastContactOn: Day | null;
  readonly reasons: readonly CallReason[];
}

/** A week of the calendar. */
export interface CallWeek {
  /** Monday */
  readonly from: Day;
  /** Sunday */
  readonly through: Day;
}

/** Where a call stands in the list: late, on its day, to be given a day, or before the contract ends. */
export type CallGroup = 'overdue' | 'thisWeek' | 'noDay' | 'ending';

/** A sponsor to call. */
export interface Call {
  readonly sponsorId: string;
  readonly group: CallGroup;
  /** the day it is due; null where none was named */
  readonly on: Day | null;
  /** the soonest first */
  readonly reasons: readonly CallReason[];
}

/** An offer is a reason to call from this many days before it lapses. Common practice, no source. */
export const OFFER_DAYS = 7;

const ORDER: readonly CallGroup[] = ['overdue', 'thisWeek', 'noDay', 'ending'];

/** The week, Monday through Sunday, that a day lies in (ISO 8601). */
export function weekOf(day: Day): CallWeek {
  const from = addDays(day, 1 - weekdayOf(day));
  return { from, through: addDays(from, 6) };
}

/**
 * Whom to call in a week. First what is overdue, the longest wait first; then day by day; then what has no day; last the
 * contracts that end. Of one day, first who has not been spoken to for longest, then by name. A sponsor stands in the list
 * once, with all its reasons.
 *
 * In the week of today, overdue is what was due before today. Of a later week it is what was due before it began, of an
 * earlier one all there is. A next step after the week, and an offer that neither lapses within `OFFER_DAYS` of today nor
 * in the week, is no reason yet.
 *
 * @param today the day in the department's zone
 * @source common practice, no source
 */
export function callList(facts: readonly CallFacts[], week: CallWeek, today: Day): Call[] {
  const overdueBefore = latest(week.from, earliest(today, addDays(week.through, 1)));
  const calls = facts.flatMap((fact): (Call & { fact: CallFacts })[] => {
    const reasons = fact.reasons.filter((reason) => isReason(reason, week, today)).toSorted((one, other) => byDay(one.on, other.on));
    const [soonest] = reasons.filter((reason) => reason.kind !== 'contractEnds');
    if (reasons.length === 0) return [];
    const on = soonest ? soonest.on : reasons[0]!.on;
    return [{ sponsorId: fact.sponsorId, group: soonest ? groupOf(on, overdueBefore) : 'ending', on, reasons, fact }];
  });
  return calls.toSorted(byUrgency).map(({ fact: _fact, ...call }) => call);
}

function isReason(reason: CallReason, week: CallWeek, today: Day): boolean {
  if (reason.kind === 'nextStep') return reason.on === null || reason.on <= week.through;
  if (reason.kind === 'offerLapses') return reason.on >= today && reason.on <= latest(addDays(today, OFFER_DAYS), week.through);
  return true;
}

function groupOf(on: Day | null, overdueBefore: Day): CallGroup {
  if (on === null) return 'noDay';
  return on < overdueBefore ? 'overdue' : 'thisWeek';
}

function byUrgency(one: Call & { fact: CallFacts }, other: Call & { fact: CallFacts }): number {
  return (
    ORDER.indexOf(one.group) - ORDER.indexOf(other.group) ||
    byDay(one.on, other.on) ||
    inOrder(one.fact.lastContactOn ?? '', other.fact.lastContactOn ?? '') ||
    inOrder(one.fact.sponsorName, other.fact.sponsorName) ||
    inOrder(one.sponsorId, other.sponsorId)
  );
}

/** No day comes last. */
function byDay(one: Day | null, other: Day | null): number {
  return inOrder(one ?? '9999', other ?? '9999');
}

const inOrder = (one: string, other: string): number => (one < other ? -1 : Number(one > other));
const latest = (one: Day, other: Day): Day => (one > other ? one : other);
const earliest = (one: Day, other: Day): Day => (one < other ? one : other);
