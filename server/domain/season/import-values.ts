import { isDay } from '../day.ts';
import type { Day } from '../day.ts';
import { centsOf } from '../money.ts';
import type { Cents } from '../money.ts';
import { foldedText } from './import-headings.ts';

const MONTHS = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const WEEKDAY = /^(?:mon|tue|wed|thu|fri|sat|sun)[a-z]*\.?,?\s+/i;

/**
 * Reads a day as schedules write it: `2026-12-04`, `12/4/2026`, `12/4/26`, `Dec 4, 2026`, each with a
 * weekday before it or not. Month comes before day; null where it is no day of the calendar.
 */
export function dayOfCell(text: string): Day | null {
  const plain = text.trim().replace(WEEKDAY, '');
  const iso = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(plain);
  if (iso) return dayFrom(iso[1]!, iso[2]!, iso[3]!);
  const american = /^(\d{1,2})\/(\d{1,2})\/(\d{4}|\d{2})$/.exec(plain);
  if (american) return dayFrom(american[3]!, american[1]!, american[2]!);
  const named = /^([a-z]{3})[a-z]*\.?\s+(\d{1,2}),?\s+(\d{4})$/i.exec(plain);
  const month = named ? MONTHS.indexOf(named[1]!.toLowerCase()) + 1 : 0;
  return named && month > 0 ? dayFrom(named[3]!, String(month), named[2]!) : null;
}

function dayFrom(year: string, month: string, day: string): Day | null {
  const text = `${year.length === 2 ? `20${year}` : year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
  return isDay(text) ? text : null;
}

export type ClockOfCell = { readonly clock: string | null } | 'unclear' | 'unreadable';

/**
 * Reads a time of day: `7:00 PM`, `7p`, `7:00p.m.`, `19:00`, `noon`. Empty, `TBA` and `TBD` are no time yet.
 * A time before eight without AM or PM is unclear, as `7:00` on a schedule is rarely the morning; with a
 * leading zero (`07:00`) it is read by the 24-hour clock.
 *
 * @returns `HH:MM`
 */
export function clockOfCell(text: string): ClockOfCell {
  const plain = text.trim().toLowerCase();
  if (plain === '' || plain === 'tba' || plain === 'tbd') return { clock: null };
  if (plain === 'noon') return { clock: '12:00' };
  const parts = /^(\d{1,2})(?::([0-5]\d))?(?::00)?\s*(?:([ap])(?:\.?m\.?)?)?$/.exec(plain);
  if (!parts) return 'unreadable';
  const [, hourText, minuteText, half] = parts as unknown as [string, string, string | undefined, string | undefined];
  const hour = Number(hourText);
  if (half !== undefined) {
    if (hour < 1 || hour > 12) return 'unreadable';
    return { clock: clock((hour % 12) + (half === 'p' ? 12 : 0), minuteText ?? '00') };
  }
  if (minuteText === undefined || hour > 23) return 'unreadable';
  if (hour < 8 && hourText.length === 1) return 'unclear';
  return { clock: clock(hour, minuteText) };
}

function clock(hour: number, minute: string): string {
  return `${String(hour).padStart(2, '0')}:${minute}`;
}

/** Reads `1200`, `1,200.00`, `$1,200.50` and `1200,50`; null where it is no amount, below zero or too large. */
export function centsOfCell(text: string): Cents | null {
  const plain = text.trim().replace(/^\$\s*/, '');
  const parts = /^(\d{1,3}(?:,\d{3})+|\d+)(?:\.(\d{1,2}))?$/.exec(plain) ?? /^(\d+),(\d{2})$/.exec(plain);
  if (!parts) return null;
  const cents = Number(parts[1]!.replaceAll(',', '')) * 100 + Number((parts[2] ?? '').padEnd(2, '0'));
  return Number.isSafeInteger(cents) ? centsOf(cents) : null;
}

/** Reads a whole number from 0 to 100,000; null where it is none. */
export function countOfCell(text: string): number | null {
  const plain = text.trim();
  return /^\d{1,6}$/.test(plain) && Number(plain) <= 100_000 ? Number(plain) : null;
}

/** Which choice a cell means, by its name or one of its other spellings; null where it is none of them. */
export function choiceOfCell<Choice extends string>(
  text: string,
  spellings: Readonly<Record<Choice, readonly string[]>>,
): Choice | null {
  const plain = foldedText(text);
  const choices = Object.entries(spellings) as [Choice, readonly string[]][];
  return choices.find(([choice, names]) => foldedText(choice) === plain || names.some((name) => foldedText(name) === plain))?.[0] ?? null;
}
