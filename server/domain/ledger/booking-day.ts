import type { Day } from '../day.ts';
import { addDays, firstOfMonth, lastOfMonth } from '../day.ts';

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
