/** How many requests may come within a time. */
export interface RequestLimit {
  readonly from: 'address' | 'form';
  readonly most: number;
  readonly withinSeconds: number;
}

/**
 * A whole gym may share one address, so that alone is no person; and no announcer can go through more than a few requests
 * in ten minutes.
 *
 * @source common practice, no source
 */
export const REQUEST_LIMITS: readonly RequestLimit[] = [
  { from: 'address', most: 8, withinSeconds: 600 },
  { from: 'form', most: 30, withinSeconds: 600 },
];

/** Further back nobody looks. */
export const LONGEST_LIMIT_SECONDS = Math.max(...REQUEST_LIMITS.map(({ withinSeconds }) => withinSeconds));

/**
 * How long the next request waits, in whole seconds; 0 where it is taken at once.
 *
 * @param asked what came by this form: how many seconds ago, and whether from the same address
 */
export function waitSeconds(asked: readonly { readonly secondsAgo: number; readonly isSameAddress: boolean }[], limits: readonly RequestLimit[] = REQUEST_LIMITS): number {
  return Math.max(0, ...limits.map(({ from, most, withinSeconds }) => {
    const those = asked.filter(({ secondsAgo, isSameAddress }) => secondsAgo < withinSeconds && (from === 'form' || isSameAddress));
    const ages = those.map(({ secondsAgo }) => secondsAgo).toSorted((a, b) => a - b);
    // The one that has to leave the time before another fits.
    const oldest = ages[most - 1];
    return oldest === undefined ? 0 : Math.ceil(withinSeconds - oldest);
  }));
}
