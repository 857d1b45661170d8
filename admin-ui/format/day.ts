import { department } from '../session/me.ts';

const STYLES = {
  short: { day: 'numeric', month: 'short', year: 'numeric' },
  weekday: { weekday: 'short', day: 'numeric', month: 'short' },
  long: { weekday: 'long', day: 'numeric', month: 'long', year: 'numeric' },
} as const satisfies Record<string, Intl.DateTimeFormatOptions>;

/** A calendar day (YYYY-MM-DD) in the department's locale; a day has no zone. */
export function dayText(day: string | null | undefined, style: keyof typeof STYLES = 'short'): string {
  if (!day) return '–';
  const [year, month, date] = day.slice(0, 10).split('-').map(Number);
  return new Intl.DateTimeFormat(department().locale, { ...STYLES[style], timeZone: 'UTC' }).format(
    Date.UTC(year ?? 0, (month ?? 1) - 1, date ?? 1),
  );
}

/** The days of a term: "Oct 6, 2026 to Jan 12, 2027", one day by itself. */
export const daysText = (from: string, through: string): string => (from === through ? dayText(from) : `${dayText(from)} to ${dayText(through)}`);

/** Today in the department's zone, as YYYY-MM-DD. */
export function today(): string {
  return new Intl.DateTimeFormat('en-CA', { timeZone: department().zone, year: 'numeric', month: '2-digit', day: '2-digit' }).format(Date.now());
}

/** A month (`2026-12` or a day of it) in the department's words: "December 2026". */
export function monthText(month: string): string {
  const [year, number] = month.split('-').map(Number);
  return new Intl.DateTimeFormat(department().locale, { month: 'long', year: 'numeric', timeZone: 'UTC' }).format(Date.UTC(year ?? 0, (number ?? 1) - 1, 1));
}
