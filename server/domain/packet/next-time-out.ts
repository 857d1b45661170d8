import { capacityOf } from '../season/window-capacity.ts';
import type { WindowCapacity } from '../season/window-capacity.ts';
import { profileAt } from './game-windows.ts';
import type { GameForPacket, NightForPacket, PlacementForPacket } from './night-for-packet.ts';
import type { Cue } from './packet.ts';
import { mainGameOf } from './variables-of-night.ts';

/** What there is room for in a window of a game; tonight's own halftime is the one of the game the night is for. */
export function roomIn(night: NightForPacket, game: GameForPacket, windowKey: string): WindowCapacity {
  const { timeOutsReliedOn, halftimeSeconds } = night.settings;
  return capacityOf(profileAt(night, game), windowKey, { timeOutsReliedOn, halftimeSeconds: game === mainGameOf(night.games) ? halftimeSeconds : null });
}

const MAY_WAIT: ReadonlySet<PlacementForPacket['window']> = new Set(['timeout', 'betweenPeriods']);

/**
 * The codes of the reads planned into a time-out, a set or an inning that nobody relies on: they wait for the next time-out
 * that is called, those of the first priority first, then as they come in the night. Game after game.
 */
export function nextTimeOut(night: NightForPacket, cues: readonly Cue[]): string[] {
  return night.games.flatMap((game) => {
    const waiting = game.placements.filter(({ window, windowKey }) => MAY_WAIT.has(window) && !roomIn(night, game, windowKey).isReliedOn);
    const priorities = new Map(waiting.map(({ cueKey, priority }) => [cueKey, priority ?? 2]));
    return cues
      .filter(({ cueKey }) => priorities.has(cueKey))
      .toSorted((one, other) => priorities.get(one.cueKey)! - priorities.get(other.cueKey)! || one.number - other.number)
      .map(({ code }) => code);
  });
}
