import { Inject, Injectable } from '@nestjs/common';
import { newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';

// What nobody has logged yet on the day a contract ends or later is not read any more, and its places are others'.
const GIVE_UP = `delete from placement using commitment, term, night, game
  where placement.department_id = $1 and commitment.department_id = $1 and term.department_id = $1 and night.department_id = $1 and game.department_id = $1
    and commitment.id = placement.commitment_id and term.id = commitment.term_id and night.id = placement.night_id and game.id = placement.game_id
    and game.season_id = $2 and term.ended_on <= night.held_on
    and not exists (select from log_entry where log_entry.department_id = $1 and log_entry.placement_id = placement.id)
    and not exists (select from sign_off where sign_off.department_id = $1 and sign_off.night_id = night.id)`;

/** The version of a season's plan: a plan that was worked out on another one is not accepted. */
@Injectable()
export class SeasonPlans {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  /** 1 where nothing was ever planned. */
  async version(seasonId: string): Promise<number> {
    const [row] = await this.work.sql<{ version: number }>('select version from season_plan where department_id = $1 and season_id = $2', [seasonId]);
    return row?.version ?? 1;
  }

  /** Keeps everybody else from planning in this season until the unit ends. Before any other row is locked. */
  async lock(seasonId: string): Promise<number> {
    await this.work.sql('insert into season_plan (department_id, id, season_id) values ($1, $2, $3) on conflict (department_id, season_id) do nothing', [newId(), seasonId]);
    const [row] = await this.work.sql<{ version: number }>('select version from season_plan where department_id = $1 and season_id = $2 for update', [seasonId]);
    return row!.version;
  }

  /** Whoever writes a placement says so here, first of all. */
  async moveOn(seasonId: string): Promise<number> {
    const version = (await this.lock(seasonId)) + 1;
    await this.work.sql('update season_plan set version = $3 where department_id = $1 and season_id = $2', [seasonId, version]);
    await this.work.sql(GIVE_UP, [seasonId]);
    return version;
  }

  /** Keeps the tables of tonight from logging until the unit ends: what they log stays where it is. After the season's lock. */
  async holdTables(seasonId: string): Promise<void> {
    await this.work.sql(
      `select 1 from night where department_id = $1 and held_on between current_date - 1 and current_date + 1
         and id in (select game_night.night_id from game_night join game on game.department_id = $1 and game.id = game_night.game_id
           where game_night.department_id = $1 and game.season_id = $2) order by id for no key update`,
      [seasonId],
    );
  }

  /** The same, for the seasons of games. */
  async moveOnWith(gameIds: readonly string[]): Promise<void> {
    for (const id of await this.seasonsOf(gameIds)) await this.moveOn(id);
  }

  async lockWith(gameIds: readonly string[]): Promise<void> {
    for (const id of await this.seasonsOf(gameIds)) await this.lock(id);
  }

  private async seasonsOf(gameIds: readonly string[]): Promise<string[]> {
    const seasons = await this.work.sql<{ id: string }>('select distinct season_id as id from game where department_id = $1 and id = any($2::uuid[]) order by season_id', [gameIds]);
    return seasons.map((season) => season.id);
  }
}
