import type { Level } from './game.ts';
import type { Sport } from './sports/all-sports.ts';
import { SPORT_FILES } from './sports/all-sports.ts';

/**
 * How long a game usually takes, in minutes from its start to its end; games below varsity are played over shorter
 * periods. Only an expectation: it places a start that floats behind another game.
 *
 * @source common practice, no source
 */
export function usualMinutesOf(sport: Sport, level: Level): number {
  const { usualMinutes } = SPORT_FILES[sport];
  return level === 'varsity' ? usualMinutes : usualMinutes - 15;
}
