import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../../domain/day.ts';
import { clockAt } from '../../domain/instant.ts';
import type { Instant } from '../../domain/instant.ts';
import type { FeedGame, FeedSitting } from '../../domain/season/calendar-feed.ts';
import { neededLines } from '../../domain/season/needed-people.ts';
import { spokenClock } from '../../domain/season/night.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { gameLabel } from '../game.dto.ts';
import type { ParticipantView } from '../game.dto.ts';

const GAMES = `select game.id, game.sport, game.level, game.status, game.played_on as "playedOn", game.moved_from_on as "movedFromOn", game.starts_at as "startsAt",
    game.starts_after_game_id as "startsAfterGameId", game.starts_after_minutes as "startsAfterMinutes",
    game.calendar_sequence as "calendarSequence", game.calendar_changed_at as "calendarChangedAt", coalesce(host.is_ours, false) as "isHosted"
  from game join season on season.department_id = $1 and season.id = game.season_id
    left join school as host on host.department_id = $1 and host.id = game.host_school_id
  where game.department_id = $1 and season.ends_on >= $2 order by game.played_on, game.starts_at nulls last, game.id`;

const TEAMS = `select participant.game_id as "gameId", participant.is_home as "isHome", team.name as "teamName", school.name as "schoolName", school.nickname, school.is_ours as "isOurs"
  from game_participant as participant join team on team.department_id = $1 and team.id = participant.team_id
    join school on school.department_id = $1 and school.id = team.school_id
  where participant.department_id = $1 and participant.game_id = any($2::uuid[]) order by participant.game_id, participant.place`;

const SITTINGS = `select game_night.game_id as "gameId", game_night.starts_at as "startsAt", night.id as "nightId", night.held_on as "heldOn", night.doors_at as "doorsAt",
    venue.name as "venueName", floor.name as "floorName", venue.address,
    (select max(number) from packet_issue where packet_issue.department_id = $1 and packet_issue.night_id = night.id) as "packetIssued"
  from game_night join night on night.department_id = $1 and night.id = game_night.night_id
    join venue on venue.department_id = $1 and venue.id = night.venue_id
    left join floor on floor.department_id = $1 and floor.id = night.floor_id
  where game_night.department_id = $1 and game_night.game_id = any($2::uuid[]) order by game_night.game_id, night.held_on, night.id`;

const PEOPLE = `select night_id as "nightId", role, name, person_id is not null as "hasAccount", arrives_at as "arrivesAt" from person_of_night
  where department_id = $1 and night_id = any($2::uuid[]) order by night_id, arrives_at nulls last, role, id`;

type GameRow = Omit<FeedGame, 'label' | 'teams' | 'sittings'> & { isHosted: boolean };
type TeamRow = Pick<ParticipantView, 'isHome' | 'teamName' | 'schoolName' | 'nickname' | 'isOurs'> & { gameId: string };
type SittingRow = Omit<FeedSitting, 'lines'> & { gameId: string; nightId: string; doorsAt: Instant | null; packetIssued: number | null };
interface PersonRow {
  nightId: string;
  role: string;
  name: string;
  hasAccount: boolean;
  arrivesAt: Instant | null;
}

/** Games of the seasons that have not been over for a year, and which of them are ours. */
export interface FoundGames {
  games: FeedGame[];
  ours: ReadonlySet<string>;
}

@Injectable()
export class FeedGames {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  /** @param tellsNight whether who is needed, doors and packet are told with each sitting */
  async since(day: Day, zone: string, tellsNight: boolean): Promise<FoundGames> {
    const rows = await this.work.sql<GameRow>(GAMES, [day]);
    const ids = rows.map(({ id }) => id);
    const teams = grouped(await this.work.sql<TeamRow>(TEAMS, [ids]), ({ gameId }) => gameId);
    const sittings = await this.work.sql<SittingRow>(SITTINGS, [ids]);
    const people = tellsNight ? await this.work.sql<PersonRow>(PEOPLE, [[...new Set(sittings.map(({ nightId }) => nightId))]]) : [];
    const byNight = grouped(people, ({ nightId }) => nightId);
    const byGame = grouped(sittings, ({ gameId }) => gameId);
    const told = (row: SittingRow): readonly string[] => (tellsNight ? nightLines(row, byNight.get(row.nightId) ?? [], zone) : []);
    const games = rows.map((row): FeedGame => ({ ...row, ...named(teams.get(row.id) ?? []), sittings: sittingsOf(row, byGame.get(row.id) ?? [], told) }));
    const isOurs = (row: GameRow): boolean => row.isHosted || (teams.get(row.id) ?? []).some((team) => team.isOurs);
    return { games, ours: new Set(rows.filter(isOurs).map(({ id }) => id)) };
  }
}

function grouped<Row>(rows: readonly Row[], keyOf: (row: Row) => string): Map<string, Row[]> {
  const found = new Map<string, Row[]>();
  for (const row of rows) found.set(keyOf(row), [...(found.get(keyOf(row)) ?? []), row]);
  return found;
}

function named(teams: readonly TeamRow[]): Pick<FeedGame, 'label' | 'teams'> {
  const nameOf = ({ schoolName, teamName }: TeamRow): string => `${schoolName} (${teamName})`;
  const home = teams.find((team) => team.isHome);
  const visitors = teams.filter((team) => !team.isHome).map(nameOf).join(', ');
  return { label: gameLabel(teams), teams: home ? [visitors, nameOf(home)].filter(Boolean).join(' at ') : visitors };
}

/** A game that nobody announces is held on no night: it has its day alone. */
function sittingsOf(game: GameRow, rows: readonly SittingRow[], told: (row: SittingRow) => readonly string[]): FeedSitting[] {
  if (rows.length === 0) return [{ heldOn: game.playedOn, startsAt: null, venueName: null, floorName: null, address: null, lines: [] }];
  return rows.map((row) => ({ ...row, lines: told(row) }));
}

function nightLines({ doorsAt, packetIssued }: SittingRow, people: readonly PersonRow[], zone: string): string[] {
  const clock = (at: Instant): string => spokenClock(clockAt(at, zone));
  return [
    ...(doorsAt === null ? [] : [`Doors: ${clock(doorsAt)}`]),
    packetIssued === null ? 'Packet: not issued yet' : `Packet: issue ${packetIssued}`,
    ...neededLines(people.map(({ role, name, hasAccount, arrivesAt }) => ({ role, name, hasAccount, arrives: arrivesAt === null ? null : clock(arrivesAt) }))),
  ];
}
