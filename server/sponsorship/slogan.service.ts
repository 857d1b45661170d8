import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../access/department.service.ts';
import { refuse } from '../domain/refusals.ts';
import { isId } from '../platform/database/ids.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { Conditions, contains, pageOf } from '../platform/http/lists.ts';
import type { Listed } from '../platform/http/lists.ts';
import type { ChangeSloganDto, SloganDto, SloganListQuery, SloganView } from './slogan.dto.ts';
import { Slogan } from './slogan.entity.ts';

const VIEW = `slogan.id, slogan.sponsor_id as "sponsorId", sponsor.name as "sponsorName", slogan.text, slogan.known_from as "knownFrom",
  slogan.registered_on as "registeredOn", slogan.version`;
const FROM = `slogan join sponsor on sponsor.department_id = slogan.department_id and sponsor.id = slogan.sponsor_id`;
const SORTS = { text: 'slogan.text collate "und-x-icu"', sponsorName: 'sponsor.name collate "und-x-icu"', registeredOn: 'slogan.registered_on' };

@Injectable()
export class SloganService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  async list(query: SloganListQuery): Promise<Listed<SloganView>> {
    const on = new Conditions('slogan.department_id')
      .add('slogan.id = any(?::uuid[])', query.id)
      .add('slogan.sponsor_id = ?', query.sponsorId)
      .add('(slogan.text ilike ? or sponsor.name ilike ?)', contains(query.q));
    const [count] = await this.work.sql<{ total: number }>(`select count(*) as total from ${FROM} where ${on.where}`, on.parameters);
    const data = await this.work.sql<SloganView>(`select ${VIEW} from ${FROM} where ${on.where} ${pageOf(query, SORTS, 'slogan.id')}`, on.parameters);
    return { data, total: count?.total ?? 0 };
  }

  async one(id: string): Promise<SloganView> {
    if (!isId(id)) return refuse('not-found');
    const [row] = await this.work.sql<SloganView>(`select ${VIEW} from ${FROM} where slogan.department_id = $1 and slogan.id = $2`, [id]);
    return row ?? refuse('not-found');
  }

  async add(form: SloganDto): Promise<SloganView> {
    const [row] = await this.work.insert(Slogan, { ...form, registeredOn: await this.departments.today() });
    return this.one(row!.id);
  }

  async change(id: string, version: number, form: ChangeSloganDto): Promise<SloganView> {
    await this.work.update(Slogan, id, version, form);
    return this.one(id);
  }

  async remove(id: string): Promise<void> {
    await this.work.one(Slogan, id);
    await this.work.remove(Slogan, { id });
  }
}
