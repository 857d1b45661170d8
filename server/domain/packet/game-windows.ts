import type { Day } from '../day.ts';
import { profileFor, schoolYearOf, windowsOf } from '../season/sport-profile.ts';
import type { Sport, SportProfile } from '../season/sport-profile.ts';
import type { GameForPacket, NightForPacket } from './night-for-packet.ts';

/** A break of a game in the order in which it comes. */
export interface GameBreak {
  readonly windowKey: string;
  readonly afterPeriod: number;
  readonly isHalftime: boolean;
}

/** The rules a game is played by; null for a sport the house has no profile of. */
export function profileOfGame(game: Pick<GameForPacket, 'sport'>, heldOn: Day, state: string | null = null): SportProfile | null {
  try {
    return profileFor(game.sport as Sport, schoolYearOf(heldOn), state);
  } catch (failure) {
    if (failure instanceof RangeError) return null;
    throw failure;
  }
}

export const profileAt = (night: NightForPacket, game: GameForPacket): SportProfile | null => profileOfGame(game, night.heldOn, night.settings.state ?? null);

const numberOf = (windowKey: string): number => Number(/\d+$/.exec(windowKey)?.[0] ?? 1);
const ORDINALS = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth'];
const ordinal = (number: number): string => ORDINALS[number - 1] ?? `${number}th`;

/** The period a break follows: the second break between quarters of basketball follows the third. */
function afterPeriod(profile: SportProfile | null, windowKey: string): number {
  const isHalftime = windowKey === 'halftime';
  const breaks = profile?.breaks.filter((one) => one.halftime === isHalftime) ?? [];
  return breaks[isHalftime ? 0 : numberOf(windowKey) - 1]?.afterPeriod ?? (isHalftime ? 1.5 : numberOf(windowKey));
}

/** The breaks of a game, halftime among them, in the order they are played; with those that only a planned read knows of. */
export function breaksOf(profile: SportProfile | null, game: GameForPacket): GameBreak[] {
  const own = profile === null ? [] : windowsOf(profile, game.owners).filter(({ kind }) => kind === 'betweenPeriods' || kind === 'halftime').map(({ key }) => key);
  const planned = game.placements.filter(({ window }) => window === 'betweenPeriods' || window === 'halftime').map(({ windowKey }) => windowKey);
  return [...new Set([...own, ...planned])]
    .map((windowKey) => ({ windowKey, afterPeriod: afterPeriod(profile, windowKey), isHalftime: windowKey === 'halftime' }))
    .sort((one, other) => one.afterPeriod - other.afterPeriod || (one.windowKey < other.windowKey ? -1 : 1));
}

/** Halftime, or in a sport without one the break in the middle; null where nothing breaks the game. */
export function middleOf(breaks: readonly GameBreak[]): GameBreak | null {
  return breaks.find((one) => one.isHalftime) ?? breaks[Math.ceil(breaks.length / 2) - 1] ?? null;
}

/** A window in words: "After the third quarter", "Time-out 2". */
export function windowTitle(profile: SportProfile | null, windowKey: string): string {
  const kind = windowKey.replace(/\d+$/, '');
  if (kind === 'pregame') return 'Before the game';
  if (kind === 'halftime') return 'Halftime';
  if (kind === 'postgame') return 'After the game';
  if (kind === 'deadBall') return 'When it happens';
  if (kind === 'timeOut') return `Time-out ${numberOf(windowKey)}`;
  if (profile === null || profile.breaks.length === 0) return `Break ${numberOf(windowKey)}`;
  return `After the ${ordinal(afterPeriod(profile, windowKey))} ${profile.periods.name}`;
}
