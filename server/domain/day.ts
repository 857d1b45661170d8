import { Temporal } from 'temporal-polyfill';

declare const day: unique symbol;

/** A calendar day, `YYYY-MM-DD`, without a zone. */
export type Day = string & { readonly [day]: true };

/** @throws RangeError when the text is not a day of the calendar (`2027-02-29` is none) */
export function dayOf(text: string): Day {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) throw new RangeError(`${text} is not a day`);
  return Temporal.PlainDate.from(text, { overflow: 'reject' }).toString() as Day;
}

export function isDay(text: unknown): text is Day {
  if (typeof text !== 'string') return false;
  try {
    dayOf(text);
    return true;
  } catch {
    return false;
  }
}

/** The day `days` after (or, when negative, before) a day. */
export function addDays(from: Day, days: number): Day {
  return Temporal.PlainDate.from(from).add({ days }).toString() as Day;
}

/** Whole days from one day to another; negative when `to` is earlier. */
export function daysBetween(from: Day, to: Day): number {
  return Temporal.PlainDate.from(from).until(to, { largestUnit: 'day' }).days;
}

/** The first day of the month a day lies in. */
export function firstOfMonth(of: Day): Day {
  return Temporal.PlainDate.from(of).with({ day: 1 }).toString() as Day;
}

/** The last day of the month a day lies in. */
export function lastOfMonth(of: Day): Day {
  const date = Temporal.PlainDate.from(of);
  return date.with({ day: date.daysInMonth }).toString() as Day;
}

/** 1 is Monday, 7 is Sunday (ISO 8601). */
export function weekdayOf(of: Day): number {
  return Temporal.PlainDate.from(of).dayOfWeek;
}

/**
 * The fiscal year a day lies in, named by the calendar year in which it ends.
 *
 * @param startsInMonth 1 to 12, the month in which the fiscal year begins (7 for July)
 */
export function fiscalYearOf(of: Day, startsInMonth: number): number {
  const date = Temporal.PlainDate.from(of);
  return startsInMonth > 1 && date.month >= startsInMonth ? date.year + 1 : date.year;
}

/** The first day of the fiscal year a day lies in; `startsInMonth` as for `fiscalYearOf`. */
export function firstOfFiscalYear(of: Day, startsInMonth: number): Day {
  const date = Temporal.PlainDate.from(of);
  return date.with({ day: 1, month: startsInMonth, year: date.month >= startsInMonth ? date.year : date.year - 1 }).toString() as Day;
}

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** "Jan 9", without the year: a season has each day once. */
export function dayInWords(day: Day): string {
  return `${MONTHS[Number(day.slice(5, 7)) - 1]} ${Number(day.slice(8))}`;
}

/** The same day so many years later; February 29 becomes February 28 where there is none. */
export function addYears(from: Day, years: number): Day {
  return Temporal.PlainDate.from(from).add({ years }, { overflow: 'constrain' }).toString() as Day;
}
