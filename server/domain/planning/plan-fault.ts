/**
 * Each way in which a plan can break what was said, with how grave it is: a wall is never built through (competitors side by
 * side only where the director says why), a wish is told and may be left unmet. Common practice, no source.
 */
export const PLAN_FAULTS = {
  'unknown-promise': 'wall',
  'unknown-game': 'wall',
  'unknown-window': 'wall',
  'place-taken-twice': 'wall',
  'window-full': 'wall',
  'group-full': 'wall',
  'window-not-of-kind': 'wall',
  'game-not-of-slot': 'wall',
  'more-than-slot': 'wall',
  'sponsors-per-game': 'wall',
  'most-per-game': 'wall',
  'fixed-read-gone': 'wall',
  'locked-night-touched': 'wall',
  'competitors-in-window': 'wall',
  'competitors-next-to-each-other': 'wall',
  'competitors-in-game': 'wall',
  'seconds-exceeded': 'wish',
  'pinned-game-without-read': 'wish',
  'least-per-game-missed': 'wish',
} as const satisfies Record<string, 'wall' | 'wish'>;

export type PlanFaultCode = keyof typeof PLAN_FAULTS;

/** One thing a plan breaks, and where. */
export interface PlanFault {
  readonly code: PlanFaultCode;
  /** a wall that only reads which must stay would break is told as a wish: no plan can help it */
  readonly severity: 'wall' | 'wish';
  readonly promiseId?: string;
  readonly gameId?: string;
  readonly windowKey?: string;
  readonly place?: number;
  /** the promise it collides with */
  readonly other?: string;
  /** the window of the other read, where it is not the same */
  readonly otherWindowKey?: string;
  /** index in the promise's slots */
  readonly slot?: number;
  /** group of read kinds whose places are full */
  readonly group?: string;
  /** what the plan has there: reads, sponsors or seconds */
  readonly has?: number;
  /** what it may have, or should at least have */
  readonly limit?: number;
}

const OF_COMPANY: ReadonlySet<PlanFaultCode> = new Set(['competitors-in-window', 'competitors-next-to-each-other', 'competitors-in-game']);

/** Two sponsors of one category stand closer to each other than one of them was promised. */
export function isOfCompany(fault: PlanFault): boolean {
  return OF_COMPANY.has(fault.code);
}

/** Seconds and company: what a plan in places alone does not look at. */
export function isBeyondPlaces(fault: PlanFault): boolean {
  return fault.code === 'seconds-exceeded' || isOfCompany(fault);
}
