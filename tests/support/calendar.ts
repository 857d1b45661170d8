import { dayOf, weekdayOf } from '../../server/domain/day.ts';
import type { Day } from '../../server/domain/day.ts';

const weekday = (number: number, name: string) => (text: string): Day => {
  const day = dayOf(text);
  if (weekdayOf(day) !== number) throw new Error(`${text} is no ${name}`);
  return day;
};

/** `friday('2026-12-04')`: the day, when it is a Friday; an error when it is not. */
export const tuesday = weekday(2, 'Tuesday');
export const friday = weekday(5, 'Friday');
export const saturday = weekday(6, 'Saturday');
