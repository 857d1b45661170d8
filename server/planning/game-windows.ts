import type { Day } from '../domain/day.ts';
import { profileFor, schoolYearOf, windowsOf } from '../domain/season/sport-profile.ts';
import { kindOfWindow } from '../domain/season/window-names.ts';
import type { GameWindow, PlacesSaid, Sport, SportProfile, WindowKind, WindowOwner } from '../domain/season/sport-profile.ts';

/** What a game's row says of its windows. */
export interface GameOfWindows {
  readonly sport: string;
  readonly playedOn: Day;
  readonly windowsOwnedBy: WindowOwner;
  readonly windowOwners: Readonly<Partial<Record<WindowKind, WindowOwner>>>;
}

/** The rules a game is played by, the state's own where there are any; null for a sport without a profile. */
export function profileOfGame(sport: string, playedOn: Day, state: string | null): SportProfile | null {
  try {
    return profileFor(sport as Sport, schoolYearOf(playedOn), state);
  } catch (failure) {
    if (failure instanceof RangeError) return null;
    throw failure;
  }
}

/** The windows of a game by its sport's profile, with the places the department says; none for a sport without one. */
export function windowsOfGame(game: GameOfWindows, allowsDeadBall: boolean, state: string | null = null, said: readonly PlacesSaid[] = []): GameWindow[] {
  const profile = profileOfGame(game.sport, game.playedOn, state);
  return profile === null ? [] : windowsOf(profile, { windowsOwnedBy: game.windowsOwnedBy, windowOwners: game.windowOwners }, allowsDeadBall, said);
}

/** The keys of the windows a read kind may be voiced in, its first choice first. */
export function keysOfKind(wanted: readonly string[], windows: readonly GameWindow[]): string[] {
  const keys = wanted.flatMap((name) =>
    windows.filter((window) => window.key === name || window.kind === kindOfWindow(name)).map((window) => window.key),
  );
  return [...new Set(keys)];
}
