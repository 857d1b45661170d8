import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../access/department.service.ts';
import { clockAt } from '../domain/instant.ts';
import { GAME_MOVES, whyNotMove } from '../domain/season/game.ts';
import type { GameMove } from '../domain/season/game.ts';
import { shownStarts } from '../domain/season/night.ts';
import type { GameStart, ShownStart } from '../domain/season/night.ts';
import { usualMinutesOf } from '../domain/season/usual-length.ts';
import { refuse } from '../domain/refusals.ts';
import { isId } from '../platform/database/ids.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { Conditions, contains, pageOf } from '../platform/http/lists.ts';
import type { Listed } from '../platform/http/lists.ts';
import { gameLabel } from './game.dto.ts';
import type { GameListQuery, GameView, ParticipantView } from './game.dto.ts';

const IS_HOME = `(exists (select 1 from school as host where host.department_id = $1 and host.id = game.host_school_id and host.is_ours)
  or exists (select 1 from game_participant as home join team on team.department_id = $1 and team.id = home.team_id
    join school on school.department_id = $1 and school.id = team.school_id
    where home.department_id = $1 and home.game_id = game.id and home.is_home and school.is_ours))`;

const VIEW = `game.id, game.season_id as "seasonId", game.sport, game.level, game.class, game.status, game.announced, game.starts_at as "startsAt",
  game.played_on as "playedOn", game.starts_after_game_id as "startsAfterGameId", game.starts_after_minutes as "startsAfterMinutes",
  game.host_school_id as "hostSchoolId", game.windows_owned_by as "windowsOwnedBy", game.window_owners as "windowOwners",
  game.moved_from_on as "movedFromOn", game.status_note as "statusNote", game.outside_id as "outsideId", game.version,
  exists (select 1 from log_entry where log_entry.department_id = $1 and log_entry.game_id = game.id) as "hasLog", ${IS_HOME} as "isHome"`;

const PARTICIPANTS = `select participant.id, participant.game_id as "gameId", participant.team_id as "teamId", participant.place, participant.is_home as "isHome",
    participant.score, team.name as "teamName", school.name as "schoolName", school.id as "schoolId", school.nickname, school.is_ours as "isOurs"
  from game_participant as participant
    join team on team.department_id = participant.department_id and team.id = participant.team_id
    join school on school.department_id = team.department_id and school.id = team.school_id
  where participant.department_id = $1 and participant.game_id = any($2::uuid[]) order by participant.game_id, participant.place`;

const NIGHTS = `select game_night.game_id as "gameId", night.id, night.venue_id as "venueId", venue.name as "venueName", night.floor_id as "floorId"
  from game_night join night on night.department_id = game_night.department_id and night.id = game_night.night_id
    join venue on venue.department_id = night.department_id and venue.id = night.venue_id
  where game_night.department_id = $1 and game_night.game_id = any($2::uuid[]) order by night.held_on, night.id`;

const SORTS = {
  playedOn: 'game.played_on',
  startsAt: 'coalesce(game.starts_at, game.played_on::timestamptz)',
  level: `array_position(array['varsity','juniorVarsity','sophomore','freshman','middleSchool'], game.level)`,
  status: 'game.status',
  class: 'game.class',
};
const TIE = 'game.played_on, game.starts_at nulls last, game.id';

type Row = Omit<GameView, 'participants' | 'nightIds' | 'nightId' | 'venueId' | 'venueName' | 'floorId' | 'label' | 'startsAtShown' | 'startsClock' | 'moves'>;
type NightOfGame = { gameId: string; id: string; venueId: string; venueName: string; floorId: string | null };

/** Games as they are shown: with who plays, where, when expected, and what may be done with them. */
@Injectable()
export class GameReader {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  async list(query: GameListQuery): Promise<Listed<GameView>> {
    const on = new Conditions('game.department_id')
      .add('game.id = any(?::uuid[])', query.id)
      .add('game.season_id = ?', query.seasonId)
      .add('game.status = ?', query.status)
      .add('game.level = ?', query.level)
      .add('game.played_on >= ?', query.from)
      .add('game.played_on <= ?', query.to)
      .add('exists (select 1 from game_night where game_night.department_id = $1 and game_night.game_id = game.id and game_night.night_id = ?)', query.nightId)
      .add('exists (select 1 from game_participant as one where one.department_id = $1 and one.game_id = game.id and one.team_id = ?)', query.teamId)
      .add(`${IS_HOME} = ?`, query.isHome)
      .add(
        `exists (select 1 from game_participant as one join team on team.department_id = $1 and team.id = one.team_id
           join school on school.department_id = $1 and school.id = team.school_id
           where one.department_id = $1 and one.game_id = game.id and (school.name ilike ? or school.nickname ilike ? or team.name ilike ?))`,
        contains(query.q),
      );
    const [count] = await this.work.sql<{ total: number }>(`select count(*) as total from game where ${on.where}`, on.parameters);
    const rows = await this.work.sql<Row>(`select ${VIEW} from game where ${on.where} ${pageOf(query, SORTS, TIE)}`, on.parameters);
    return { data: await this.views(rows), total: count?.total ?? 0 };
  }

  async one(id: string): Promise<GameView> {
    const [view] = isId(id) ? await this.byIds([id]) : [];
    return view ?? refuse('not-found');
  }

  async byIds(ids: readonly string[]): Promise<GameView[]> {
    const rows = await this.work.sql<Row>(`select ${VIEW} from game where game.department_id = $1 and game.id = any($2::uuid[]) order by ${TIE}`, [ids]);
    return this.views(rows);
  }

  async ofSeason(seasonId: string): Promise<GameView[]> {
    const rows = await this.work.sql<Row>(`select ${VIEW} from game where game.department_id = $1 and game.season_id = $2 order by ${TIE}`, [seasonId]);
    return this.views(rows);
  }

  private async views(rows: readonly Row[]): Promise<GameView[]> {
    if (rows.length === 0) return [];
    const ids = rows.map((row) => row.id);
    const participants = await this.work.sql<ParticipantView & { gameId: string }>(PARTICIPANTS, [ids]);
    const nights = await this.work.sql<NightOfGame>(NIGHTS, [ids]);
    const starts = await this.starts(rows);
    const teamsOf = byGame(participants);
    const nightsOf = byGame(nights);
    return rows.map((row) => viewOf(row, teamsOf.get(row.id) ?? [], nightsOf.get(row.id) ?? [], starts.get(row.id)));
  }

  /** Starts by the wall clock, with those of the games they float behind. */
  private async starts(rows: readonly Row[]): Promise<Map<string, ShownStart>> {
    const { zone } = await this.departments.here();
    const known = new Map<string, Row>(rows.map((row) => [row.id, row]));
    const missing = (): string[] => [...known.values()].flatMap(({ startsAfterGameId: id }) => (id && !known.has(id) ? [id] : []));
    for (let behind = missing(); behind.length > 0; behind = missing()) {
      const more = await this.work.sql<Row>(`select ${VIEW} from game where game.department_id = $1 and game.id = any($2::uuid[])`, [behind]);
      for (const row of more) known.set(row.id, row);
      if (more.length === 0) break;
    }
    const starts: GameStart[] = [...known.values()].map((row) => ({
      id: row.id,
      startsClock: row.startsAt === null ? null : clockAt(row.startsAt, zone),
      startsAfterGameId: row.startsAfterGameId,
      startsAfterMinutes: row.startsAfterMinutes,
      usualMinutes: usualMinutesOf(row.sport, row.level),
    }));
    return new Map(shownStarts(starts).map((start) => [start.gameId, start]));
  }
}

function byGame<Of extends { gameId: string }>(rows: readonly Of[]): Map<string, Of[]> {
  const found = new Map<string, Of[]>();
  for (const row of rows) found.set(row.gameId, [...(found.get(row.gameId) ?? []), row]);
  return found;
}

function teamView(participant: ParticipantView & { gameId: string }): ParticipantView {
  const { gameId: _, ...view } = participant;
  return view;
}

function viewOf(row: Row, participants: readonly (ParticipantView & { gameId: string })[], nights: readonly NightOfGame[], start: ShownStart | undefined): GameView {
  const last = nights.at(-1);
  const teams = participants.map(teamView);
  return {
    ...row,
    participants: teams,
    nightIds: nights.map((night) => night.id),
    nightId: last?.id ?? null,
    venueId: last?.venueId ?? null,
    venueName: last?.venueName ?? null,
    floorId: last?.floorId ?? null,
    label: gameLabel(teams),
    startsAtShown: start?.words ?? '',
    startsClock: start?.clock ?? null,
    moves: (Object.keys(GAME_MOVES) as GameMove[]).filter((move) => whyNotMove(row, move) === null),
  };
}
