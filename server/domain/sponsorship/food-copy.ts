import { weekdayOf } from '../day.ts';
import type { Day } from '../day.ts';

/** The school day goes on for half an hour after its official end. @source 7 CFR 210.11(a)(5) */
export const MINUTES_AFTER_SCHOOL = 30;

/** When a sponsor's words are read. */
export interface FoodRead {
  /** the sponsor's category sells food or drink */
  readonly isFood: boolean;
  readonly readOn: Day;
  /** `HH:MM` or `HH:MM:SS` on the wall of the gym; null where nobody knows yet */
  readonly clock: string | null;
}

/**
 * Whether a moment lies in the school day: from the midnight before until thirty minutes after the end of the official
 * school day, that minute's first second included. Saturdays and Sundays are no school days; holidays are not known here.
 *
 * @param clock `HH:MM` or `HH:MM:SS`
 * @param schoolDayEndsAt `HH:MM`, the end of the official school day
 * @source 7 CFR 210.11(a)(5); 81 FR 50151
 */
export function isInSchoolDay(readOn: Day, clock: string, schoolDayEndsAt: string): boolean {
  if (weekdayOf(readOn) > 5) return false;
  return secondsOf(clock) <= secondsOf(schoolDayEndsAt) + MINUTES_AFTER_SCHOOL * 60;
}

/**
 * The caution for words of a food or drink sponsor inside the school day, or null where there is none to give. It warns
 * and never blocks: what may be sold on campus then is for the district's wellness policy to say.
 *
 * @source 7 CFR 210.31(c)(3)(iii)
 */
export function foodCaution(read: FoodRead, schoolDayEndsAt: string): string | null {
  if (!read.isFood || read.clock === null || !isInSchoolDay(read.readOn, read.clock, schoolDayEndsAt)) return null;
  return (
    'Food and drink named on campus during the school day have to be ones that may be sold there (7 CFR 210.31(c)(3)(iii)); ' +
    `the school day ends ${MINUTES_AFTER_SCHOOL} minutes after the last bell. Ask who keeps the district’s wellness policy, or read it later.`
  );
}

function secondsOf(clock: string): number {
  const [hours = 0, minutes = 0, seconds = 0] = clock.split(':').map(Number);
  return hours * 3600 + minutes * 60 + seconds;
}
