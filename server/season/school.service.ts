import { Inject, Injectable } from '@nestjs/common';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { Conditions, contains, pageOf } from '../platform/http/lists.ts';
import type { Listed } from '../platform/http/lists.ts';
import type { ChangeSchoolDto, SchoolDto, SchoolListQuery, SchoolView } from './school.dto.ts';
import { schoolView } from './school.dto.ts';
import { School } from './school.entity.ts';

const VIEW = `id, name, short_name as "shortName", nickname, say_as as "sayAs", is_ours as "isOurs", first_colour as "firstColour",
  second_colour as "secondColour", account_code as "accountCode", outside_id as "outsideId", version`;
const SORTS = { name: 'name collate "und-x-icu"', nickname: 'nickname collate "und-x-icu"' };

@Injectable()
export class SchoolService {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async list(query: SchoolListQuery): Promise<Listed<SchoolView>> {
    const on = new Conditions('department_id')
      .add('id = any(?::uuid[])', query.id)
      .add('is_ours = ?', query.isOurs)
      .add('(name ilike ? or nickname ilike ?)', contains(query.q));
    const [count] = await this.work.sql<{ total: number }>(`select count(*) as total from school where ${on.where}`, on.parameters);
    const data = await this.work.sql<SchoolView>(`select ${VIEW} from school where ${on.where} ${pageOf(query, SORTS)}`, on.parameters);
    return { data, total: count?.total ?? 0 };
  }

  async one(id: string): Promise<SchoolView> {
    return schoolView(await this.work.one(School, id));
  }

  async add(form: SchoolDto): Promise<SchoolView> {
    const [row] = await this.work.insert(School, form);
    return this.one(row!.id);
  }

  async change(id: string, version: number, form: ChangeSchoolDto): Promise<SchoolView> {
    await this.work.update(School, id, version, form);
    return this.one(id);
  }
}
