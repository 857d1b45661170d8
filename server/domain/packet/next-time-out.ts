import { windowsOf } from '../season/sport-profile.ts';
import { profileAt } from './game-windows.ts';
import type { GameForPacket, NightForPacket } from './night-for-packet.ts';
import type { Cue } from './packet.ts';

const numberOf = (windowKey: string): number => Number(/\d+$/.exec(windowKey)?.[0] ?? 1);

/** How many time-outs of a game the department dares to rely on; where it has not said, those of a usual game. */
export function timeOutsReliedOn(night: NightForPacket, game: GameForPacket): number {
  const own = night.settings.timeOutsReliedOn;
  if (own !== null) return own;
  const profile = profileAt(night, game);
  return profile === null ? 0 : windowsOf(profile, game.owners).filter((window) => window.kind === 'timeOut').length;
}

/**
 * The codes of the reads that stand behind the time-outs one relies on: they wait for the next one that is called, those of
 * the first priority first, then as they were planned. Game after game.
 */
export function nextTimeOut(night: NightForPacket, cues: readonly Cue[]): string[] {
  return night.games.flatMap((game) => {
    const relied = timeOutsReliedOn(night, game);
    const waiting = game.placements.filter(({ window, windowKey }) => window === 'timeout' && numberOf(windowKey) > relied);
    return waiting
      .sort((one, other) => (one.priority ?? 2) - (other.priority ?? 2) || numberOf(one.windowKey) - numberOf(other.windowKey) || one.place - other.place)
      .flatMap(({ cueKey }) => cues.find((cue) => cue.cueKey === cueKey)?.code ?? []);
  });
}
