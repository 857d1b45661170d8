import { addDays, dayInWords } from '../day.ts';
import type { Day } from '../day.ts';
import { addSeconds, clockAt, instantAt } from '../instant.ts';
import type { Instant } from '../instant.ts';
import { LEVEL_IN_SENTENCE } from './game.ts';
import type { GameStatus, Level } from './game.ts';
import { spokenClock } from './night.ts';
import type { Sport } from './sports/all-sports.ts';
import { usualMinutesOf } from './usual-length.ts';

/** One sitting of a game: the night it is held on. A game that was suspended has several, the last one last. */
export interface FeedSitting {
  heldOn: Day;
  /** of a sitting before the last one; the last goes by the game's own start */
  startsAt: Instant | null;
  venueName: string | null;
  floorName: string | null;
  address: string | null;
  /** what only who works the night may read, line by line */
  lines: readonly string[];
}

export interface FeedGame {
  id: string;
  /** "Herons at Kestrels" */
  label: string;
  /** "Port Ansel High School (Varsity boys) at Tamarack Ridge High School (Varsity boys)" */
  teams: string;
  sport: Sport;
  level: Level;
  status: GameStatus;
  playedOn: Day;
  movedFromOn: Day | null;
  startsAt: Instant | null;
  startsAfterGameId: string | null;
  startsAfterMinutes: number | null;
  calendarSequence: number;
  calendarChangedAt: Instant;
  sittings: readonly FeedSitting[];
}

/** RFC 5545, section 3.8.1.11, for an event. */
export type CalendarStatus = 'CONFIRMED' | 'TENTATIVE' | 'CANCELLED';

/** What one VEVENT says. Times are moments; a game without an hour has its whole day, `untilDay` excluded. */
export interface CalendarEntry {
  uid: string;
  sequence: number;
  changedAt: Instant;
  status: CalendarStatus;
  when: { startsAt: Instant; endsAt: Instant } | { day: Day; untilDay: Day };
  summary: string;
  description: string;
  location: string | null;
}

type Games = ReadonlyMap<string, FeedGame>;

/**
 * The entries of a calendar, one for each sitting of each game, in the order of the games.
 *
 * A game keeps its uid wherever it is moved, and its sequence only rises: it counts its own moves and those of the games it starts after,
 * whose hour is its hour. A postponed game without a new day and a cancelled one stay in the calendar with their old hour, as CANCELLED.
 *
 * @param games those that others start after among them
 * @param zone IANA name, by which a floating hour keeps its clock on another day
 * @source RFC 5545, sections 3.6.1, 3.8.1.11, 3.8.4.7, 3.8.7.4
 */
export function calendarEntries(games: readonly FeedGame[], zone: string, isListed: (game: FeedGame) => boolean = () => true): CalendarEntry[] {
  const byId = new Map(games.map((game) => [game.id, game]));
  return games.filter(isListed).flatMap((game) => game.sittings.map((sitting, place) => entryOf(game, sitting, place, byId, zone)));
}

function entryOf(game: FeedGame, sitting: FeedSitting, place: number, games: Games, zone: string): CalendarEntry {
  const isLast = place === game.sittings.length - 1;
  const startsAt = isLast ? startOf(game, games, zone, new Set()) : sitting.startsAt;
  const isOff = isLast && (game.status === 'postponed' || game.status === 'cancelled');
  const isKnown = startsAt !== null || !isLast || game.status !== 'planned';
  const chain = chainOf(game, games);
  return {
    uid: `game-${game.id}${place === 0 ? '' : `-${place + 1}`}@rafterline`,
    sequence: chain.reduce((sum, one) => sum + one.calendarSequence, 0),
    changedAt: chain.map((one) => one.calendarChangedAt).reduce((latest, one) => (one > latest ? one : latest)),
    status: isOff ? 'CANCELLED' : isKnown ? 'CONFIRMED' : 'TENTATIVE',
    when: startsAt === null ? { day: sitting.heldOn, untilDay: addDays(sitting.heldOn, 1) } : { startsAt, endsAt: addSeconds(startsAt, 60 * usualMinutesOf(game.sport, game.level)) },
    summary: `${isOff ? (game.status === 'postponed' ? 'Postponed: ' : 'Cancelled: ') : ''}${game.label}, ${LEVEL_IN_SENTENCE[game.level]} ${game.sport}`,
    description: [game.teams, ...linesOf(game, place, startsAt, zone), ...sitting.lines].join('\n'),
    location: placeOf(sitting),
  };
}

/** What everybody may know of a sitting beyond its hour and its place. */
function linesOf(game: FeedGame, place: number, startsAt: Instant | null, zone: string): string[] {
  const isLast = place === game.sittings.length - 1;
  const lines: string[] = [];
  if (place > 0) lines.push(`The rest of the game of ${dayInWords(game.sittings[0]!.heldOn)}.`);
  if (!isLast) return [...lines, 'It was broken off and goes on another day.'];
  if (game.status === 'postponed') return [...lines, 'It is postponed. A new day is not set yet.'];
  if (game.status === 'cancelled') return [...lines, 'It is cancelled.'];
  if (game.status === 'suspended') lines.push('It was broken off. When it goes on is not set yet.');
  if (game.movedFromOn !== null && place === 0) lines.push(`It was moved from ${dayInWords(game.movedFromOn)}.`);
  if (startsAt === null) lines.push('The hour is not set yet.');
  else if (game.startsAt === null) lines.push(`It starts ${game.startsAfterMinutes ?? 0} minutes after the game before, about ${spokenClock(clockAt(startsAt, zone))}.`);
  return lines;
}

/** The game and those it starts after, each once. */
function chainOf(game: FeedGame, games: Games): FeedGame[] {
  const chain: FeedGame[] = [];
  for (let next: FeedGame | undefined = game; next && !chain.includes(next); next = next.startsAfterGameId === null ? undefined : games.get(next.startsAfterGameId)) chain.push(next);
  return chain;
}

/** The game's own moment, or the usual end of the game before and the minutes between; null while nobody can say. */
function startOf(game: FeedGame, games: Games, zone: string, seen: Set<string>): Instant | null {
  if (game.startsAt !== null) return game.startsAt;
  if (game.startsAfterGameId === null || seen.has(game.id)) return null;
  seen.add(game.id);
  const before = games.get(game.startsAfterGameId);
  const start = before ? startOf(before, games, zone, seen) : null;
  if (!before || start === null) return null;
  const thatDay = before.playedOn === game.playedOn ? start : instantAt(game.playedOn, clockAt(start, zone), zone);
  return addSeconds(thatDay, 60 * (usualMinutesOf(before.sport, before.level) + (game.startsAfterMinutes ?? 0)));
}

function placeOf({ venueName, floorName, address }: FeedSitting): string | null {
  if (venueName === null) return null;
  return [floorName === null ? venueName : `${venueName} (${floorName})`, address?.replace(/\s*\n\s*/g, ', ')].filter(Boolean).join(', ');
}
