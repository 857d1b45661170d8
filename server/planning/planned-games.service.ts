import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../access/department.service.ts';
import type { Day } from '../domain/day.ts';
import type { GameClass, GameStatus, Level } from '../domain/season/game.ts';
import type { GameWindow, WindowKind, WindowOwner } from '../domain/season/sport-profile.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { WindowPlacesService } from '../season/window-places.service.ts';
import { windowsOfGame } from './game-windows.ts';

interface GameRow {
  id: string;
  seasonId: string;
  sport: string;
  level: Level;
  class: GameClass;
  status: GameStatus;
  announced: boolean;
  playedOn: Day;
  movedFromOn: Day | null;
  windowsOwnedBy: WindowOwner;
  windowOwners: Partial<Record<WindowKind, WindowOwner>>;
  isHome: boolean;
  /** all teams that play, ours and theirs */
  teamIds: string[];
  ourTeamIds: string[];
  label: string;
  nightId: string | null;
  isSignedOff: boolean;
}

/** A game as planning sees it: who plays, whether it is ours to fill, on which night. */
export interface PlannedGame extends GameRow {
  windows: GameWindow[];
}

const SELECT = `select game.id, game.season_id as "seasonId", game.sport, game.level, game.class, game.status, game.announced,
    game.played_on as "playedOn", game.moved_from_on as "movedFromOn", game.windows_owned_by as "windowsOwnedBy", game.window_owners as "windowOwners",
    coalesce(playing.home_is_ours, false) as "isHome", coalesce(playing.teams, '{}') as "teamIds", coalesce(playing.ours, '{}') as "ourTeamIds",
    coalesce(playing.visitors, 'Visitors') || ' at ' || coalesce(playing.home, 'home') as label,
    held.night_id as "nightId", coalesce(held.signed_off, false) as "isSignedOff"
  from game
  left join lateral (
    select bool_or(school.is_ours) filter (where game_participant.is_home) as home_is_ours, array_agg(team.id) as teams,
      array_agg(team.id) filter (where school.is_ours) as ours, min(school.nickname) filter (where game_participant.is_home) as home,
      string_agg(school.nickname, ', ' order by game_participant.place) filter (where not game_participant.is_home) as visitors
    from game_participant join team on team.department_id = $1 and team.id = game_participant.team_id
    join school on school.department_id = $1 and school.id = team.school_id
    where game_participant.department_id = $1 and game_participant.game_id = game.id) as playing on true
  left join lateral (
    select game_night.night_id, sign_off.id is not null as signed_off from game_night
    join night on night.department_id = $1 and night.id = game_night.night_id
    left join sign_off on sign_off.department_id = $1 and sign_off.night_id = night.id
    where game_night.department_id = $1 and game_night.game_id = game.id
    order by sign_off.id is not null, night.held_on desc, night.id limit 1) as held on true
  where game.department_id = $1`;

@Injectable()
export class PlannedGames {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(WindowPlacesService) private readonly places: WindowPlacesService,
  ) {}

  async ofSeason(seasonId: string): Promise<PlannedGame[]> {
    return this.load(`${SELECT} and game.season_id = $2 order by game.played_on, game.starts_at nulls last, game.id`, seasonId);
  }

  /** Those of seasons, and those of teams that commitments name, whatever season they are of. */
  async ofReach(seasonIds: readonly string[], teamIds: readonly string[]): Promise<PlannedGame[]> {
    return this.load(
      `${SELECT} and (game.season_id = any($2::uuid[]) or playing.ours && $3::uuid[]) order by game.played_on, game.starts_at nulls last, game.id`,
      [...new Set(seasonIds)], [...new Set(teamIds)],
    );
  }

  async ofNight(nightId: string): Promise<PlannedGame[]> {
    return this.load(
      `${SELECT} and exists (select from game_night where game_night.department_id = $1 and game_night.game_id = game.id and game_night.night_id = $2)
        order by game.starts_at nulls last, game.id`,
      nightId,
    );
  }

  async one(gameId: string): Promise<PlannedGame | null> {
    const [game] = await this.load(`${SELECT} and game.id = $2`, gameId);
    return game ?? null;
  }

  private async load(sql: string, ...parameters: readonly unknown[]): Promise<PlannedGame[]> {
    const rows = await this.work.sql<GameRow>(sql, parameters);
    const { settings } = await this.departments.here();
    const said = await this.places.bySport();
    return rows.map((row) => ({ ...row, windows: windowsOfGame(row, settings.bankShotMention === 'deadBall', settings.state, said.get(row.sport)) }));
  }
}
