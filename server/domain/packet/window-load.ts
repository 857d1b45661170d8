import { windowsOf } from '../season/sport-profile.ts';
import type { SportProfile } from '../season/sport-profile.ts';
import { breaksOf, profileAt, windowTitle } from './game-windows.ts';
import type { GameForPacket, NightForPacket } from './night-for-packet.ts';
import { roomIn } from './next-time-out.ts';
import type { Cue, WindowLoad } from './packet.ts';
import { pregameSeconds } from './pregame-clock.ts';
import type { Moment } from './script.ts';

/** Scripts that can be left for another window; the anthem, line-ups, scores and the association's words cannot. */
export const MOVABLE: ReadonlySet<Cue['moment']> = new Set<Moment>([
  'conduct', 'substances', 'seating', 'officials', 'recognition', 'honours', 'floorSafety', 'concession', 'fundraiser', 'club', 'camp',
]);

/**
 * The cue to move out of a window that is too full: sponsor reads before scripts, the least of their priority first, and
 * of those the shortest that mends it alone; where none does, the longest of the least.
 *
 * @param overSeconds by how much the window is too full
 */
export function cueToMove(cues: readonly Cue[], overSeconds: number, priorityOf: (cue: Cue) => number): Cue | null {
  const sponsored = cues.filter((cue) => cue.isSponsored);
  const candidates = (sponsored.length > 0 ? sponsored : cues.filter((cue) => MOVABLE.has(cue.moment))).toSorted(
    (one, other) => priorityOf(other) - priorityOf(one) || one.seconds - other.seconds || other.number - one.number,
  );
  const mending = candidates.find((cue) => cue.seconds >= overSeconds);
  if (mending) return mending;
  const [least] = candidates;
  return least === undefined ? null : (candidates.findLast((cue) => priorityOf(cue) === priorityOf(least)) ?? null);
}

/** The windows of a game in the order of the night, and those only a planned read knows of. */
function keysOf(profile: SportProfile | null, game: GameForPacket): string[] {
  const timeOuts = [
    ...(profile === null ? [] : windowsOf(profile, game.owners).filter(({ kind }) => kind === 'timeOut').map(({ key }) => key)),
    ...game.placements.filter(({ window }) => window === 'timeout').map(({ windowKey }) => windowKey),
  ];
  return ['pregame', ...new Set(timeOuts), ...breaksOf(profile, game).map(({ windowKey }) => windowKey), 'postgame'];
}

/**
 * Every window of every game with what is read in it, its seconds against those there are. A window that may not come and
 * that nobody relies on carries no sponsor: those reads wait in line for the next time-out.
 */
export function windowLoads(night: NightForPacket, cues: readonly Cue[]): WindowLoad[] {
  return night.games.flatMap((game, place) => {
    const profile = profileAt(night, game);
    const priorities = new Map(game.placements.map(({ cueKey, priority }) => [cueKey, priority ?? 2]));
    const own = cues.filter((cue) => cue.gameId === game.gameId);
    return keysOf(profile, game).map((windowKey): WindowLoad => {
      const { mayNotHappen, isReliedOn, ...room } = roomIn(night, game, windowKey);
      const capacitySeconds = windowKey === 'pregame' ? pregameSeconds(game, place) : room.capacitySeconds;
      const within = own.filter((cue) => (cue.windowKey === windowKey && (isReliedOn || !cue.isSponsored)) || (cue.moment === 'periodScore' && windowKey.startsWith('betweenPeriods')));
      const filledSeconds = within.reduce((sum, cue) => sum + cue.seconds, 0);
      const overSeconds = capacitySeconds === null ? 0 : Math.max(0, Math.ceil(filledSeconds - capacitySeconds));
      const move = overSeconds === 0 ? null : cueToMove(within, overSeconds, (cue) => priorities.get(cue.cueKey) ?? 2);
      return {
        gameId: game.gameId, windowKey, title: windowTitle(profile, windowKey), capacitySeconds, filledSeconds, overSeconds,
        moveCueNumber: move?.number ?? null, mayNotHappen, isReliedOn, cueNumbers: within.map((cue) => cue.number),
      };
    });
  });
}
