import { BASEBALL, FOOTBALL, SOCCER, SOFTBALL } from './profiles-outdoor.ts';
import { BASKETBALL_BY_HALVES, BASKETBALL_BY_QUARTERS, VOLLEYBALL, WRESTLING } from './profiles-indoor.ts';
import type { SportProfile } from './sport-profile.ts';

/**
 * Every sport profile known. A change of the rules is a new profile with the season it holds from; the
 * old one stays, so that last year's sheets still read right. A state that plays differently gets a row
 * with its two letters.
 */
export const PROFILES: readonly SportProfile[] = [
  BASKETBALL_BY_HALVES,
  BASKETBALL_BY_QUARTERS,
  FOOTBALL,
  VOLLEYBALL,
  SOCCER,
  WRESTLING,
  BASEBALL,
  SOFTBALL,
];
