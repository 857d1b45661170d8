import { Inject, Injectable } from '@nestjs/common';
import { refuse, sentenceOfRefusal } from '../../domain/refusals.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Conditions, pageOf } from '../../platform/http/lists.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { isId } from '../../platform/database/ids.ts';
import { RESERVED } from './company.sql.ts';
import type { ChangeReservedCategoryDto, ReservedCategoryDto, ReservedCategoryListQuery, ReservedCategoryView } from './reserved-category.dto.ts';
import { ReservedCategory } from './reserved-category.entity.ts';

const SORTS = { startsOn: 'reserved.starts_on', categoryName: 'category.name collate "und-x-icu"' };

@Injectable()
export class ReservedCategoryService {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async list(query: ReservedCategoryListQuery): Promise<Listed<ReservedCategoryView>> {
    const on = new Conditions('reserved.department_id').add('reserved.id = any(?::uuid[])', query.id).add('reserved.category_id = ?', query.categoryId);
    const [count] = await this.work.sql<{ total: number }>(`select count(*) as total from reserved_category as reserved where ${on.where}`, on.parameters);
    const data = await this.work.sql<ReservedCategoryView>(`${RESERVED} and ${on.where} ${pageOf(query, SORTS, 'reserved.id')}`, on.parameters);
    return { data, total: count?.total ?? 0 };
  }

  async one(id: string): Promise<ReservedCategoryView> {
    if (!isId(id)) return refuse('not-found');
    const [row] = await this.work.sql<ReservedCategoryView>(`${RESERVED} and reserved.id = $2`, [id]);
    return row ?? refuse('not-found');
  }

  /** @throws Refused `ends-before-it-starts`, `unknown-category`, `unknown-school` */
  async add(form: ReservedCategoryDto): Promise<ReservedCategoryView> {
    checkDays(form);
    const [row] = await this.work.insert(ReservedCategory, form);
    return this.one(row!.id);
  }

  async change(id: string, version: number, form: ChangeReservedCategoryDto): Promise<ReservedCategoryView> {
    const before = await this.one(id);
    checkDays({ startsOn: before.startsOn, endsOn: before.endsOn, ...form });
    await this.work.update(ReservedCategory, id, version, form);
    return this.one(id);
  }

  /** @throws Refused `still-in-use` where an exception was recorded against it: then it gets a last day */
  async remove(id: string): Promise<void> {
    await this.work.one(ReservedCategory, id);
    await this.work.remove(ReservedCategory, { id });
  }
}

function checkDays({ startsOn, endsOn }: Pick<ReservedCategoryDto, 'startsOn' | 'endsOn'>): void {
  if (endsOn && endsOn < startsOn) refuse('ends-before-it-starts', {}, { endsOn: sentenceOfRefusal('ends-before-it-starts') });
}
