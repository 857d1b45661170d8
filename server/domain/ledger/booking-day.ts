import type { Day } from '../day.ts';
import { addDays, dayOf, fiscalYearOf, firstOfMonth, lastOfMonth } from '../day.ts';
import { refuse } from '../refusals.ts';

/**
 * The day on which something is booked: the day it happened if that month is open, else the first open day.
 *
 * @param closedMonths any day of each closed month
 */
export function bookingDayOf(occurredOn: Day, closedMonths: readonly Day[]): Day {
  const closed = new Set(closedMonths.map(firstOfMonth));
  const last = [...closed].sort().at(-1);
  if (last === undefined || firstOfMonth(occurredOn) > last) return occurredOn;
  return addDays(lastOfMonth(last), 1);
}

const YEARS_BACK = 10;

/**
 * The days on which money may be dated: from ten fiscal years ago to the end of the next one. Beyond that somebody
 * mistyped the year.
 *
 * @param startsInMonth 1 to 12, the month in which the fiscal year begins
 * @source common practice, no source
 */
export function moneyDays(today: Day, startsInMonth: number): { first: Day; last: Day } {
  const year = fiscalYearOf(today, startsInMonth);
  const startOf = (named: number) => dayOf(`${startsInMonth > 1 ? named - 1 : named}-${String(startsInMonth).padStart(2, '0')}-01`);
  return { first: startOf(year - YEARS_BACK), last: addDays(startOf(year + 2), -1) };
}

/** @throws Refused `day-too-far-ahead`, `day-too-long-ago` */
export function checkMoneyDay(on: Day, { first, last }: { first: Day; last: Day }): void {
  if (on > last) refuse('day-too-far-ahead', { lastDay: last });
  if (on < first) refuse('day-too-long-ago', { firstDay: first });
}
