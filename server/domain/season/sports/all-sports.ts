import type { SportFile } from '../sport-rules.ts';
import { BASEBALL } from './baseball.ts';
import { BASKETBALL } from './basketball.ts';
import { FOOTBALL } from './football.ts';
import { SOCCER } from './soccer.ts';
import { SOFTBALL } from './softball.ts';
import { VOLLEYBALL } from './volleyball.ts';
import { WRESTLING } from './wrestling.ts';

/** Every sport the house knows, in the order in which they are offered. A new one is its file and a line here. */
export const SPORT_FILES = {
  basketball: BASKETBALL,
  football: FOOTBALL,
  volleyball: VOLLEYBALL,
  soccer: SOCCER,
  wrestling: WRESTLING,
  baseball: BASEBALL,
  softball: SOFTBALL,
} satisfies Readonly<Record<string, SportFile>>;

export type Sport = keyof typeof SPORT_FILES;
