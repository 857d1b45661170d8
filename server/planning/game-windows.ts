import type { Day } from '../domain/day.ts';
import { profileFor, schoolYearOf, windowsOf } from '../domain/season/sport-profile.ts';
import { kindOfWindow } from '../domain/season/window-names.ts';
import type { GameWindow, Sport, WindowKind, WindowOwner } from '../domain/season/sport-profile.ts';

/** What a game's row says of its windows. */
export interface GameOfWindows {
  readonly sport: string;
  readonly playedOn: Day;
  readonly windowsOwnedBy: WindowOwner;
  readonly windowOwners: Readonly<Partial<Record<WindowKind, WindowOwner>>>;
}

/** The windows of a game by its sport's profile, the state's own where there is one; none for a sport without a profile. */
export function windowsOfGame(game: GameOfWindows, allowsDeadBall: boolean, state: string | null = null): GameWindow[] {
  try {
    const profile = profileFor(game.sport as Sport, schoolYearOf(game.playedOn), state);
    return windowsOf(profile, { windowsOwnedBy: game.windowsOwnedBy, windowOwners: game.windowOwners }, allowsDeadBall);
  } catch (failure) {
    if (failure instanceof RangeError) return [];
    throw failure;
  }
}

/** The keys of the windows a read kind may be voiced in, its first choice first. */
export function keysOfKind(wanted: readonly string[], windows: readonly GameWindow[]): string[] {
  const keys = wanted.flatMap((name) =>
    windows.filter((window) => window.key === name || window.kind === kindOfWindow(name)).map((window) => window.key),
  );
  return [...new Set(keys)];
}
