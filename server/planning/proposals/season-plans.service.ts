import { Inject, Injectable } from '@nestjs/common';
import { newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';

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
    return version;
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
