import type { SportRules } from '../../../season/sport-rules.ts';

const ENDINGS = ['th', 'st', 'nd', 'rd'] as const;

/** "1st", "2nd", "3rd", "11th". */
export function ordinal(number: number): string {
  const isTeen = number % 100 >= 11 && number % 100 <= 13;
  return `${number}${isTeen ? 'th' : (ENDINGS[number % 10] ?? 'th')}`;
}

/** Whether the game may go on after its last period. */
export const goesIntoExtraPeriods = (rules: SportRules): boolean => rules.sheet.overtime !== null;

/**
 * A period as the sheet and the log name it: "1st quarter", "7th inning", "overtime", "overtime 2".
 *
 * @param number 1 and up; extra periods go on counting after the last
 */
export function periodName(rules: SportRules, number: number): string {
  const { name, count } = rules.periods;
  const heading = rules.sheet.periods[number - 1];
  if (heading !== undefined && !/^\d+$/.test(heading)) return heading;
  if (number <= count || name === 'inning') return `${ordinal(number)} ${name}`;
  return number === count + 1 ? 'overtime' : `overtime ${number - count}`;
}

/** The number of a period by its name, or by its bare number as the office writes it; null for what names none. */
export function periodNumber(rules: SportRules, name: string | null): number | null {
  const text = (name ?? '').trim().toLowerCase();
  const overtime = /^overtime(?: (\d{1,2}))?$/.exec(text);
  if (overtime) return rules.periods.count + Number(overtime[1] ?? 1);
  const numbered = /^(\d{1,2})(?:st|nd|rd|th)?(?: [a-z]+)?$/.exec(text);
  const number = Number(numbered?.[1] ?? 0);
  return number >= 1 ? number : null;
}

/** Which half of the game a period belongs to; extra periods belong to the second. */
export function halfOf(rules: SportRules, period: number): 1 | 2 {
  return period * 2 <= rules.periods.count ? 1 : 2;
}
