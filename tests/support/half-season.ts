import { addDays } from '../../server/domain/day.ts';
import type { Day } from '../../server/domain/day.ts';
import { dayAt, instantOf } from '../../server/domain/instant.ts';
import type { Department } from './department.ts';
import { aSeason } from './season.ts';
import type { Season } from './season.ts';

export interface HalfSeason extends Season {
  today: Day;
}

/** A season that is on, whatever the day of the test: home games so many days from today, each with its night. */
export async function aHalfSeason(department: Department, daysFromToday: readonly number[]): Promise<HalfSeason> {
  const { director } = department;
  const [{ zone }] = (await department.ask('select zone from department where id = $1', [department.id])) as [{ zone: string }];
  const today = dayAt(instantOf(new Date().toISOString()), zone);
  const here = await aSeason(department, 0);
  const [startsOn, endsOn] = [addDays(today, -60), addDays(today, 90)];
  const season = await director.make('/api/seasons', { name: 'Basketball now', sport: 'basketball', startsOn, endsOn });
  const team = await director.make('/api/teams', { seasonId: season.id, schoolId: here.schoolId, name: 'Varsity girls', level: 'varsity', headCoach: 'Bram Okonkwo' });
  const opponentTeam = await director.make('/api/teams', { seasonId: season.id, schoolId: here.opponentId, name: 'Varsity girls', level: 'varsity' });
  const games: Season['games'] = [];
  for (const days of daysFromToday) {
    const playedOn = addDays(today, days);
    const game = await director.make('/api/games', { seasonId: season.id, level: 'varsity', homeTeamId: team.id, visitorTeamIds: [opponentTeam.id], playedOn, startsAtClock: '19:00', venueId: here.venueId, floorId: here.floorId });
    games.push({ gameId: game.id, nightId: game.nightIds[0], playedOn });
  }
  return { ...here, seasonId: season.id, startsOn, endsOn, teamId: team.id, opponentTeamId: opponentTeam.id, games, today };
}
