import type { Day } from '../server/domain/day.ts';
import { GameReader } from '../server/season/game-reader.service.ts';
import { GameService } from '../server/season/game.service.ts';
import type { Opponent, SeasonPlaces, TeamName } from './schools.ts';
import type { Story } from './story.ts';

/** One line of the schedule: the game day by its place around today, who plays, and how it ended where it has been played. */
export interface PlannedLine {
  key: string;
  day: number;
  team: TeamName;
  opponent: Opponent;
  at: 'home' | 'away';
  clock: string | null;
  after?: string;
  class?: 'conference' | 'stateSeries';
  /** the game day it is held on now, where it was postponed */
  movedTo?: number;
  /** ours, then theirs */
  score?: [number, number];
}

const home = (key: string, day: number, team: TeamName, opponent: Opponent, score?: [number, number]): PlannedLine => ({
  ...{ key, day, team, opponent, at: 'home', clock: '19:00', class: 'conference' },
  ...(score ? { score } : {}),
});

/** Junior varsity at half past five, varsity so soon after it as the floor is free. */
const doubleheader = (key: string, day: number, opponent: Opponent, scores?: [[number, number], [number, number]]): PlannedLine[] => [
  { ...home(`${key}-jv`, day, 'Boys JV', opponent, scores?.[0]), clock: '17:30' },
  { ...home(key, day, 'Boys varsity', opponent, scores?.[1]), clock: null, after: `${key}-jv` },
];

const away = (day: number, team: TeamName, opponent: Opponent, score?: [number, number]): PlannedLine => ({
  ...home(`away${day}-${team}`, day, team, opponent, score),
  at: 'away',
});

export const SCHEDULE: readonly PlannedLine[] = [
  away(-12, 'Boys varsity', 'Miners', [51, 58]),
  ...doubleheader('night1', -11, 'Herons', [[38, 41], [62, 55]]),
  away(-10, 'Girls varsity', 'Larks', [47, 39]),
  home('night2', -9, 'Girls varsity', 'Otters', [54, 50]),
  home('snowed', -8, 'Girls varsity', 'Pronghorns'),
  away(-7, 'Boys varsity', 'Herons', [49, 63]),
  ...doubleheader('night3', -6, 'Larks', [[44, 40], [58, 49]]),
  home('night4', -5, 'Girls varsity', 'Herons', [41, 46]),
  away(-4, 'Girls varsity', 'Miners', [52, 45]),
  ...doubleheader('night5', -3, 'Otters', [[36, 35], [66, 61]]),
  { ...home('boiler', -2, 'Boys varsity', 'Pronghorns'), movedTo: 3 },
  ...doubleheader('last', -1, 'Miners', [[40, 47], [57, 54]]),
  ...doubleheader('next', 1, 'Pronghorns'),
  home('second', 2, 'Girls varsity', 'Miners'),
  away(3, 'Girls varsity', 'Otters'),
  away(4, 'Boys varsity', 'Larks'),
  ...doubleheader('third', 5, 'Herons'),
  home('fourth', 6, 'Girls varsity', 'Larks'),
  away(7, 'Boys varsity', 'Otters'),
  { ...home('seniors-girls', 8, 'Girls varsity', 'Pronghorns'), clock: '17:30' },
  { ...home('seniors-boys', 8, 'Boys varsity', 'Otters'), clock: null, after: 'seniors-girls' },
  { ...home('state', 10, 'Girls varsity', 'Herons'), class: 'stateSeries' },
];

/** The number the conference's office gave the game. */
export function outsideIdOf(line: PlannedLine): string {
  return `TR-${String(SCHEDULE.indexOf(line) + 1).padStart(2, '0')}`;
}

/** Games by the keys of the schedule, with their nights. */
export type Games = Record<string, { gameId: string; nightId: string; day: Day; line: PlannedLine }>;

export async function tellSchedule(story: Story, places: SeasonPlaces): Promise<Games> {
  return story.on(story.calendar.seasonStartsOn, async () => {
    const games: Games = {};
    for (const line of SCHEDULE) {
      const ours = places.ours[line.team];
      const theirs = places.theirs[line.opponent][line.team];
      const isHome = line.at === 'home';
      const day = story.calendar.gameDay(line.day);
      const gameId = await story.of(GameService).add({
        ...{ seasonId: places.seasonId, level: line.team === 'Boys JV' ? 'juniorVarsity' : 'varsity', class: line.class ?? 'regular' },
        ...{ homeTeamId: isHome ? ours : theirs, visitorTeamIds: [isHome ? theirs : ours], playedOn: day, startsAtClock: line.clock },
        ...(line.after ? { startsAfterGameId: games[line.after]!.gameId, startsAfterMinutes: 20 } : {}),
        venueId: isHome ? places.home.venueId : places.gyms[line.opponent],
        floorId: isHome ? places.home.floorId : null,
        announced: isHome,
        hostSchoolId: isHome ? places.schoolIds.Kestrels : places.schoolIds[line.opponent],
        outsideId: outsideIdOf(line),
        windowsOwnedBy: line.class === 'stateSeries' ? 'association' : 'us',
      });
      games[line.key] = { gameId, nightId: '', day, line };
    }
    for (const game of await story.of(GameReader).byIds(Object.values(games).map((one) => one.gameId))) {
      const told = Object.values(games).find((one) => one.gameId === game.id)!;
      told.nightId = game.nightId ?? '';
    }
    return games;
  });
}
