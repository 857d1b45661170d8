import { addDays, addYears, daysBetween } from '../../day.ts';
import type { Day } from '../../day.ts';

export interface SeasonDays {
  readonly startsOn: Day;
  readonly endsOn: Day;
}

/** From the days of one season to those of the next. */
export interface SeasonMove {
  readonly from: SeasonDays;
  readonly to: SeasonDays;
}

const WEEKS_OF_A_YEAR = 52;

/** The days of the next season as they are proposed: 52 weeks later, so a Friday stays a Friday. */
export function nextSeasonDays({ startsOn, endsOn }: SeasonDays): SeasonDays {
  return { startsOn: addDays(startsOn, 7 * WEEKS_OF_A_YEAR), endsOn: addDays(endsOn, 7 * WEEKS_OF_A_YEAR) };
}

/** "Basketball 2026-27" becomes "Basketball 2027-28"; a name without a year is told apart by "next". */
export function nextSeasonName(name: string): string {
  const moved = name.replace(/\b(\d{4})(?:(\s*[-–/]\s*)(\d{4}|\d{2}))?\b/g, (_, year: string, between?: string, until?: string) =>
    between === undefined || until === undefined ? String(Number(year) + 1) : `${Number(year) + 1}${between}${String(Number(until) + 1).padStart(until.length, '0').slice(-until.length)}`,
  );
  return moved === name ? `${name}, next season` : moved;
}

/**
 * A day of a contract in the next season. The first and the last day of the season are those of the next one; a day between keeps
 * its distance from the first and stays within the season. A day outside keeps its date, so that a year from July 1 to June 30
 * stays one, and it stays outside, so that a contract over a whole season still is.
 */
export function movedDay(day: Day, move: SeasonMove): Day {
  const { from, to } = move;
  if (day === from.startsOn) return to.startsOn;
  if (day === from.endsOn) return to.endsOn;
  const sameDate = movedMoneyDay(day, move);
  if (day < from.startsOn) return sameDate < to.startsOn ? sameDate : to.startsOn;
  if (day > from.endsOn) return sameDate > to.endsOn ? sameDate : to.endsOn;
  const moved = addDays(day, daysBetween(from.startsOn, to.startsOn));
  return moved > to.endsOn ? to.endsOn : moved;
}

/** Days of money keep their date, so that a bill of July 1 stays in its fiscal year: so many calendar years later, one at least. */
export function movedMoneyDay(day: Day, { from, to }: SeasonMove): Day {
  return addYears(day, Math.max(1, Number(to.startsOn.slice(0, 4)) - Number(from.startsOn.slice(0, 4))));
}
