import type { Day } from '../day.ts';
import { addDays, firstOfMonth, isDay, lastOfMonth } from '../day.ts';
import { refuse } from '../refusals.ts';

/** Closed for good; over and still open; the month today lies in; a month that has not begun. */
export const MONTH_STATES = ['closed', 'open', 'running', 'ahead'] as const;
export type MonthState = (typeof MONTH_STATES)[number];

/** The first day of a month written as `2026-12`. @throws Refused `not-found` when the text is no month */
export function monthCalled(text: string): Day {
  const first = `${text}-01`;
  return /^\d{4}-\d{2}$/.test(text) && isDay(first) ? first : refuse('not-found');
}

/** A month as its address has it: `2026-12`. */
export const nameOfMonth = (day: Day): string => day.slice(0, 7);

/** The first day of the month after. */
export const monthAfter = (day: Day): Day => addDays(lastOfMonth(day), 1);

/** The first days of all months from one day's to another's, in order; none when the second lies before the first. */
export function monthsFrom(first: Day, last: Day): Day[] {
  const months: Day[] = [];
  for (let month = firstOfMonth(first); month <= last; month = monthAfter(month)) months.push(month);
  return months;
}

/** @param closed the first days of closed months */
export function stateOfMonth(month: Day, today: Day, closed: readonly Day[]): MonthState {
  if (closed.includes(month)) return 'closed';
  const running = firstOfMonth(today);
  return month < running ? 'open' : month === running ? 'running' : 'ahead';
}

export interface MonthToClose {
  month: Day;
  today: Day;
  /** the month in which the first event was booked; null while the books are empty */
  firstMonth: Day | null;
  closed: readonly Day[];
}

/**
 * Months close in their order, one after the other, once they are over by the department's calendar.
 *
 * @throws Refused `not-found` for a month before the first event, `month-already-closed`, `month-not-over`, `earlier-month-open`
 * @source common practice, no source
 */
export function assertMayClose({ month, today, firstMonth, closed }: MonthToClose): void {
  if (firstMonth === null || month < firstMonth) refuse('not-found');
  const state = stateOfMonth(month, today, closed);
  if (state === 'closed') refuse('month-already-closed');
  if (state !== 'open') refuse('month-not-over', { day: monthAfter(month) });
  const earlier = monthsFrom(firstMonth, month).find((one) => one < month && !closed.includes(one));
  if (earlier) refuse('earlier-month-open', { month: nameOfMonth(earlier) });
}
