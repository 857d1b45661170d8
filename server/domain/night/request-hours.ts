import type { Day } from '../day.ts';
import { addSeconds, instantAt } from '../instant.ts';
import type { Instant } from '../instant.ts';

/** A game that runs late, and the way out of the lot. */
export const HOURS_AFTER_MIDNIGHT = 3;

/**
 * When the public form of a night closes by itself: three hours after the last minute of its day (23:59), hours that pass.
 *
 * @param heldOn the night's day by the wall calendar of `zone`
 * @param zone IANA name
 * @source common practice, no source
 */
export function requestsEndAt(heldOn: Day, zone: string): Instant {
  return addSeconds(instantAt(heldOn, '23:59', zone), HOURS_AFTER_MIDNIGHT * 3600);
}
