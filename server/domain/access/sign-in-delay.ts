import { addSeconds } from '../instant.ts';
import type { Instant } from '../instant.ts';

/** Four slips are free; from the fifth failure on every next try waits. */
export const FAILURES_WITHOUT_DELAY = 4;
export const LONGEST_DELAY_SECONDS = 15 * 60;

/**
 * How long the next try waits after so many failures in a row: one second after the fifth, twice as long
 * after each one more, never more than fifteen minutes. A sign-in that works starts the count again.
 *
 * @returns seconds
 */
export function signInDelaySeconds(failuresInRow: number): number {
  const beyond = failuresInRow - FAILURES_WITHOUT_DELAY;
  if (beyond <= 0) return 0;
  return Math.min(LONGEST_DELAY_SECONDS, 2 ** Math.min(beyond - 1, 30));
}

/** The first moment at which another try is looked at; null where none has failed. */
export function nextTryAt(failuresInRow: number, lastFailedAt: Instant | null): Instant | null {
  return lastFailedAt === null ? null : addSeconds(lastFailedAt, signInDelaySeconds(failuresInRow));
}

/** True when a try at this moment is answered at once with "wait", whether the password is right or not. */
export function mustWait(failuresInRow: number, lastFailedAt: Instant | null, now: Instant): boolean {
  const from = nextTryAt(failuresInRow, lastFailedAt);
  return from !== null && now < from;
}
