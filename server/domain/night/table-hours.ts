import { addDays } from '../day.ts';
import type { Day } from '../day.ts';
import { addSeconds, instantAt } from '../instant.ts';
import type { Instant } from '../instant.ts';

/** For what a device still holds when the night is over: it may come back after a holiday weekend. */
export const HOURS_AFTER_THE_NIGHT = 72;
/** An own link made long before the table opens: whoever signs in again gets another. */
export const HOURS_BEFORE_THE_TABLE = 72;
/** A link made when the night is long over, so that paper can be typed in. */
export const LEAST_OPEN_HOURS = 24;

/** From when until when a link opens a night's table. */
export interface TableHours {
  readonly opensAt: Instant;
  readonly endsAt: Instant;
}

/**
 * A table opens with the day before its night, so that it is stored on a device before the gym, where there may be no
 * signal at all. It ends 72 hours after the last minute of the night's day (23:59); hours are hours that pass, so a
 * change of the clocks between moves the hour on the wall. A link made later than that is good for a day.
 *
 * @param heldOn the night's day by the wall calendar of `zone`
 * @param zone IANA name
 * @param madeAt the moment at which the link is made
 * @source common practice, no source
 */
export function tableHours(heldOn: Day, zone: string, madeAt: Instant): TableHours {
  const opensAt = instantAt(addDays(heldOn, -1), '00:00', zone);
  const afterNight = addSeconds(instantAt(heldOn, '23:59', zone), HOURS_AFTER_THE_NIGHT * 3600);
  const afterMaking = addSeconds(madeAt, LEAST_OPEN_HOURS * 3600);
  return { opensAt, endsAt: afterNight > afterMaking ? afterNight : afterMaking };
}

/** When a person's own link to a table ends: with the table, and made before the table opens after a few days at most. */
export function ownLinkEndsAt({ opensAt, endsAt }: TableHours, madeAt: Instant): Instant {
  return madeAt < opensAt ? addSeconds(madeAt, HOURS_BEFORE_THE_TABLE * 3600) : endsAt;
}
