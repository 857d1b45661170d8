import type { Level } from './game.ts';
import type { Sport } from './sport-profile.ts';

const VARSITY_MINUTES: Readonly<Record<Sport, number>> = {
  basketball: 90,
  football: 150,
  volleyball: 90,
  soccer: 105,
  wrestling: 120,
  baseball: 135,
  softball: 120,
};

/**
 * How long a game usually takes, in minutes from its start to its end; games below varsity are played over shorter
 * periods. Only an expectation: it places a start that floats behind another game.
 *
 * @source common practice, no source
 */
export function usualMinutesOf(sport: Sport, level: Level): number {
  return level === 'varsity' ? VARSITY_MINUTES[sport] : VARSITY_MINUTES[sport] - 15;
}
