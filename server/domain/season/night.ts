import type { Day } from '../day.ts';

/** One game as a night needs it: a clock of its own, or so many minutes after another game begins to end. */
export interface GameStart {
  readonly id: string;
  /** `HH:MM` on the wall of the venue; null while the time is open or floats */
  readonly startsClock: string | null;
  /** the game this one follows, where the start floats */
  readonly startsAfterGameId: string | null;
  /** minutes after the end of the game it follows */
  readonly startsAfterMinutes: number | null;
  /** how long a game of this kind usually takes, in minutes */
  readonly usualMinutes: number;
}

export interface ShownStart {
  readonly gameId: string;
  /** null while neither this game nor the one it follows has a time */
  readonly clock: string | null;
  /** "about" stands before a floating clock */
  readonly floating: boolean;
  /** such as "20 minutes after the game before, about 6:50 PM" */
  readonly words: string;
}

/**
 * The clock each game of a night is expected to begin at. A floating start is the start of the game it
 * follows, plus that game's usual length, plus the minutes between. A clock past midnight wraps.
 * Games that follow each other in a ring have no clock.
 */
export function shownStarts(games: readonly GameStart[]): ShownStart[] {
  return games.map((game) => {
    const minutes = startMinutes(game, games, new Set());
    const clock = minutes === null ? null : clockOfMinutes(minutes);
    const floating = game.startsClock === null && game.startsAfterGameId !== null;
    return { gameId: game.id, clock, floating, words: startWords(game, clock, floating) };
  });
}

function startMinutes(game: GameStart, games: readonly GameStart[], seen: Set<string>): number | null {
  if (game.startsClock !== null) return minutesOfClock(game.startsClock);
  if (game.startsAfterGameId === null || seen.has(game.id)) return null;
  seen.add(game.id);
  const before = games.find((other) => other.id === game.startsAfterGameId);
  if (!before) return null;
  const start = startMinutes(before, games, seen);
  return start === null ? null : start + before.usualMinutes + (game.startsAfterMinutes ?? 0);
}

function startWords(game: GameStart, clock: string | null, floating: boolean): string {
  if (!floating) return clock === null ? 'time to be announced' : spokenClock(clock);
  const after = `${game.startsAfterMinutes ?? 0} minutes after the game before`;
  return clock === null ? after : `${after}, about ${spokenClock(clock)}`;
}

/** `19:00` as `7:00 PM`. */
export function spokenClock(clock: string): string {
  const minutes = minutesOfClock(clock);
  const hour = Math.floor(minutes / 60);
  return `${hour % 12 === 0 ? 12 : hour % 12}:${String(minutes % 60).padStart(2, '0')} ${hour < 12 ? 'AM' : 'PM'}`;
}

const CLOCK = /^([01]\d|2[0-3]):([0-5]\d)$/;

/** Whether a value is a time of day as it is stored, `HH:MM`. */
export function isClock(value: unknown): value is string {
  return typeof value === 'string' && CLOCK.test(value);
}

/** Minutes since midnight of `HH:MM`. @throws RangeError when the text is no clock */
export function minutesOfClock(clock: string): number {
  const parts = CLOCK.exec(clock);
  if (!parts) throw new RangeError(`${clock} is not a time of day`);
  return Number(parts[1]) * 60 + Number(parts[2]);
}

/** `HH:MM` of minutes since midnight; minutes past midnight wrap into the next day. */
export function clockOfMinutes(minutes: number): string {
  const inDay = ((minutes % 1440) + 1440) % 1440;
  return `${String(Math.floor(inDay / 60)).padStart(2, '0')}:${String(inDay % 60).padStart(2, '0')}`;
}

export interface GameOfDay extends GameStart {
  readonly playedOn: Day;
  readonly venueId: string | null;
  readonly floorId: string | null;
  /** false for a game nobody announces: it belongs to no night */
  readonly announced: boolean;
}

/** The games of one program: one venue, one day, one packet, one log, one sign-off. */
export interface NightGroup {
  readonly heldOn: Day;
  readonly venueId: string;
  readonly gameIds: readonly string[];
}

/**
 * Groups announced games into nights: one night per venue and day, its games by expected start, games
 * without a time last. A game without a venue waits.
 */
export function groupIntoNights(games: readonly GameOfDay[]): NightGroup[] {
  const groups = new Map<string, GameOfDay[]>();
  for (const game of games) {
    if (!game.announced || game.venueId === null) continue;
    const key = `${game.playedOn} ${game.venueId}`;
    groups.set(key, [...(groups.get(key) ?? []), game]);
  }
  return [...groups.values()]
    .map((ofNight) => nightOf(ofNight))
    .sort((a, b) => (a.heldOn === b.heldOn ? compare(a.venueId, b.venueId) : compare(a.heldOn, b.heldOn)));
}

function nightOf(games: readonly GameOfDay[]): NightGroup {
  const first = games[0]!;
  const order = (game: GameOfDay): number => startMinutes(game, games, new Set()) ?? 2880;
  const sorted = games.toSorted((a, b) => order(a) - order(b) || compare(a.id, b.id));
  return { heldOn: first.playedOn, venueId: first.venueId!, gameIds: sorted.map((game) => game.id) };
}

export interface FloorClash {
  readonly code: 'floor-taken';
  readonly gameIds: readonly [string, string];
  readonly sentence: string;
}

/**
 * Games that would be on one floor at one time. A warning with a reason, not a wall: half-courts and
 * mats share a floor. Games without an expected start are not compared.
 */
export function floorClashes(games: readonly GameOfDay[]): FloorClash[] {
  const clashes: FloorClash[] = [];
  games.forEach((one, place) => {
    for (const other of games.slice(place + 1)) {
      if (one.floorId === null || one.floorId !== other.floorId || one.playedOn !== other.playedOn) continue;
      const oneStart = startMinutes(one, games, new Set());
      const otherStart = startMinutes(other, games, new Set());
      if (oneStart === null || otherStart === null) continue;
      if (oneStart < otherStart + other.usualMinutes && otherStart < oneStart + one.usualMinutes) {
        clashes.push({
          code: 'floor-taken',
          gameIds: [one.id, other.id],
          sentence: `Two games are on this floor at ${spokenClock(clockOfMinutes(Math.max(oneStart, otherStart)))}. Give the reason if they share it.`,
        });
      }
    }
  });
  return clashes;
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
