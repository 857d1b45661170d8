import { profileAt } from './game-windows.ts';
import type { NightForPacket } from './night-for-packet.ts';
import type { Cue } from './packet.ts';
import { mainGameOf } from './variables-of-night.ts';

export interface LongHalftime {
  readonly minutes: number;
  readonly usualMinutes: number;
  readonly longestMinutes: number;
}

/**
 * Tonight's halftime where it is longer than the rules' own; null where it is not, or where the sport has none. It may be
 * made longer up to a limit, when the home management tells the visitors before the start.
 *
 * @source NFHS Basketball Rule 5-5-1 (ten minutes, at most fifteen for special activities)
 */
export function longHalftime(night: NightForPacket): LongHalftime | null {
  const game = mainGameOf(night.games);
  const rule = game && profileAt(night, game)?.breaks.find((one) => one.halftime);
  const seconds = night.settings.halftimeSeconds;
  if (!rule || seconds === null || seconds <= rule.seconds) return null;
  return { minutes: Math.round(seconds / 6) / 10, usualMinutes: rule.seconds / 60, longestMinutes: rule.longestSeconds / 60 };
}

export function longHalftimeSentence({ minutes, usualMinutes, longestMinutes }: LongHalftime): string {
  const limit = minutes > longestMinutes ? ` The rules allow no more than ${longestMinutes}.` : '';
  return `Halftime is ${minutes} minutes tonight, not ${usualMinutes}: tell the visitors before the start.${limit}`;
}

/** The reminder stands above the welcome, while there is still time, and above halftime. */
export function halftimeCaution(night: NightForPacket, cue: Pick<Cue, 'moment' | 'gameId'>): string | null {
  const isThere = cue.moment === 'welcome' || (cue.moment === 'halftime' && cue.gameId === mainGameOf(night.games)?.gameId);
  const long = isThere ? longHalftime(night) : null;
  return long && longHalftimeSentence(long);
}
