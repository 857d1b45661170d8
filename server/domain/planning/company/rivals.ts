import type { Separation } from '../../sponsorship/separation.ts';
import type { PlanPromise } from '../season.ts';

const STRICTNESS: Readonly<Record<Separation, number>> = { none: 0, window: 1, next: 2, game: 3 };

export const strictnessOf = (separation: Separation): number => STRICTNESS[separation];

/**
 * Whether reads of two promises may stand so many windows apart in one game: the stricter separation of two sponsors of one
 * category holds.
 */
export function mayStandApart(one: PlanPromise, other: PlanPromise, windowsApart: number): boolean {
  if (one.categoryId === '' || one.categoryId !== other.categoryId || one.sponsorId === other.sponsorId) return true;
  const strictness = Math.max(STRICTNESS[one.separation], STRICTNESS[other.separation]);
  if (windowsApart === 0) return strictness < STRICTNESS.window;
  return windowsApart === 1 ? strictness < STRICTNESS.next : strictness < STRICTNESS.game;
}
