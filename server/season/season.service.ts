import { Inject, Injectable } from '@nestjs/common';
import { In } from 'typeorm';
import { refuse } from '../domain/refusals.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { Conditions, contains, pageOf } from '../platform/http/lists.ts';
import type { Listed } from '../platform/http/lists.ts';
import { Game } from './game.entity.ts';
import type { ChangeSeasonDto, SeasonDto, SeasonListQuery, SeasonView } from './season.dto.ts';
import { seasonView } from './season.dto.ts';
import { Season } from './season.entity.ts';

const SORTS = { startsOn: 'starts_on', endsOn: 'ends_on', name: 'name collate "und-x-icu"', sport: 'sport' };

@Injectable()
export class SeasonService {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async list(query: SeasonListQuery): Promise<Listed<SeasonView>> {
    const on = new Conditions('department_id')
      .add('id = any(?::uuid[])', query.id)
      .add('sport = ?', query.sport)
      .add('name ilike ?', contains(query.q));
    const [count] = await this.work.sql<{ total: number }>(`select count(*) as total from season where ${on.where}`, on.parameters);
    const page = await this.work.sql<{ id: string }>(`select id from season where ${on.where} ${pageOf(query, SORTS)}`, on.parameters);
    const ids = page.map((row) => row.id);
    const rows = await this.work.find(Season, { id: In(ids) });
    const next = await this.work.find(Season, { followsSeasonId: In(ids) });
    const nextOf = (season: Season) => next.find((one) => one.followsSeasonId === season.id)?.id ?? null;
    return { data: ids.flatMap((id) => rows.filter((row) => row.id === id)).map((row) => seasonView(row, nextOf(row))), total: count?.total ?? 0 };
  }

  async one(id: string): Promise<SeasonView> {
    const season = await this.work.one(Season, id);
    const next = await this.work.first(Season, { followsSeasonId: season.id });
    return seasonView(season, next?.id ?? null);
  }

  async add(form: SeasonDto): Promise<SeasonView> {
    const [row] = await this.work.insert(Season, form);
    return this.one(row!.id);
  }

  /** Games carry their sport, so a season that has games keeps its own. */
  async change(id: string, version: number, form: ChangeSeasonDto): Promise<SeasonView> {
    const season = await this.work.one(Season, id);
    const changesSport = form.sport !== undefined && form.sport !== season.sport;
    if (changesSport && (await this.work.count(Game, { seasonId: id })) > 0) refuse('season-has-games');
    await this.work.update(Season, id, version, form);
    return this.one(id);
  }
}
