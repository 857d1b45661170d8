import { Inject, Injectable } from '@nestjs/common';
import { refuse } from '../domain/refusals.ts';
import { isId } from '../platform/database/ids.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { Conditions, contains, pageOf } from '../platform/http/lists.ts';
import type { Listed } from '../platform/http/lists.ts';
import type { ChangeSponsorCategoryDto, SponsorCategoryDto, SponsorCategoryListQuery, SponsorCategoryView } from './sponsor-category.dto.ts';
import { SponsorCategory } from './sponsor-category.entity.ts';

const VIEW = `id, name, is_blocked as "isBlocked", is_food as "isFood", version`;
const FROM = `sponsor_category`;
const SORTS = { name: 'name collate "und-x-icu"', isBlocked: 'is_blocked' };

@Injectable()
export class SponsorCategoryService {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async list(query: SponsorCategoryListQuery): Promise<Listed<SponsorCategoryView>> {
    const on = new Conditions('sponsor_category.department_id')
      .add('sponsor_category.id = any(?::uuid[])', query.id)
      .add('is_blocked = ?', query.isBlocked)
      .add('name ilike ?', contains(query.q));
    const [count] = await this.work.sql<{ total: number }>(`select count(*) as total from ${FROM} where ${on.where}`, on.parameters);
    const data = await this.work.sql<SponsorCategoryView>(`select ${VIEW} from ${FROM} where ${on.where} ${pageOf(query, SORTS, 'sponsor_category.id')}`, on.parameters);
    return { data, total: count?.total ?? 0 };
  }

  async one(id: string): Promise<SponsorCategoryView> {
    if (!isId(id)) return refuse('not-found');
    const [row] = await this.work.sql<SponsorCategoryView>(`select ${VIEW} from ${FROM} where sponsor_category.department_id = $1 and sponsor_category.id = $2`, [id]);
    return row ?? refuse('not-found');
  }

  async add(form: SponsorCategoryDto): Promise<SponsorCategoryView> {
    const [row] = await this.work.insert(SponsorCategory, form);
    return this.one(row!.id);
  }

  async change(id: string, version: number, form: ChangeSponsorCategoryDto): Promise<SponsorCategoryView> {
    await this.work.update(SponsorCategory, id, version, form);
    return this.one(id);
  }
}
