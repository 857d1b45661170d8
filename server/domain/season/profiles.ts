import type { SportProfile } from './sport-profile.ts';
import type { SportFile } from './sport-rules.ts';
import type { Sport } from './sports/all-sports.ts';
import { SPORT_FILES } from './sports/all-sports.ts';

/**
 * Every sport profile known. A change of the rules is a new row with the season it holds from; the old one
 * stays, so that last year's sheets still read right. A state that plays differently gets a row with its two
 * letters.
 */
export const PROFILES: readonly SportProfile[] = Object.entries<SportFile>(SPORT_FILES).flatMap(([sport, { rules }]) =>
  rules.map((rule) => ({ ...rule, sport: sport as Sport })),
);
