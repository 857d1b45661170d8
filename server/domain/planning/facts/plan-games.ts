import type { Day } from '../../day.ts';
import { capacityOf } from '../../season/window-capacity.ts';
import type { CapacityOfNight } from '../../season/window-capacity.ts';
import type { GameWindow } from '../../season/sport-profile.ts';
import type { SportRules } from '../../season/sport-rules.ts';
import type { GameClass, GameStatus } from '../../season/game.ts';
import type { PlanWindow } from '../season.ts';

/** What decides whether a game can still be planned. */
export interface GameToPlan {
  readonly isHome: boolean;
  readonly announced: boolean;
  readonly class: GameClass;
  readonly status: GameStatus;
  /** the day it is held */
  readonly playedOn: Day;
  readonly nightId: string | null;
  readonly isSignedOff: boolean;
}

/**
 * Whether reads can still be planned into a game: an announced home game of the regular season or the conference, today
 * or later, with a night that nobody has signed off. Invitational and state-series games are not ours to fill.
 */
export function isStillToPlan(game: GameToPlan, today: Day): boolean {
  const isOurs = game.isHome && game.announced && (game.class === 'regular' || game.class === 'conference');
  return isOurs && game.status === 'planned' && game.playedOn >= today && game.nightId !== null && !game.isSignedOff;
}

/**
 * The windows of a game as planning sees them, in the order of the night. A window that may not come and on which nobody
 * relies has no places; seconds are those left after the warning.
 *
 * @param profile null for a sport without one: nothing limits the seconds
 */
export function planWindows(windows: readonly GameWindow[], profile: SportRules | null, night: CapacityOfNight): PlanWindow[] {
  return windows.map(({ key, kind, owner, places, groupPlaces }) => {
    const { capacitySeconds, isReliedOn } = capacityOf(profile, key, night);
    const counts = owner === 'us' && isReliedOn;
    return { key, kind, places: counts ? places : 0, groupPlaces: counts ? groupPlaces : {}, seconds: capacitySeconds };
  });
}
