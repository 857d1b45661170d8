import { Inject, Injectable } from '@nestjs/common';
import { IsNull } from 'typeorm';
import { Membership } from '../access/membership.entity.ts';
import { refuse } from '../domain/refusals.ts';
import { isId } from '../platform/database/ids.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { Conditions, contains, pageOf } from '../platform/http/lists.ts';
import type { Listed } from '../platform/http/lists.ts';
import type { ChangeSponsorDto, SponsorDto, SponsorListQuery, SponsorView } from './sponsor.dto.ts';
import { Sponsor } from './sponsor.entity.ts';

const VIEW = `sponsor.id, sponsor.name, sponsor.say_as as "sayAs", sponsor.category_id as "categoryId", category.name as "categoryName", sponsor.status,
  sponsor.contact_name as "contactName", sponsor.email, sponsor.phone, sponsor.address, sponsor.last_contact_on as "lastContactOn",
  sponsor.next_step as "nextStep", sponsor.next_step_on as "nextStepOn", sponsor.caller_person_id as "callerPersonId", person.name as "callerName",
  sponsor.lost_on as "lostOn", sponsor.lost_reason as "lostReason", sponsor.note, sponsor.outside_id as "outsideId", sponsor.version,
  (select count(*) from contract where contract.department_id = $1 and contract.sponsor_id = sponsor.id) as contracts`;
const FROM = `sponsor join sponsor_category as category on category.department_id = sponsor.department_id and category.id = sponsor.category_id
  left join person on person.id = sponsor.caller_person_id`;
const SORTS = { name: 'sponsor.name collate "und-x-icu"', categoryName: 'category.name collate "und-x-icu"', status: 'sponsor.status', lastContactOn: 'sponsor.last_contact_on', nextStepOn: 'sponsor.next_step_on' };

@Injectable()
export class SponsorService {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async list(query: SponsorListQuery): Promise<Listed<SponsorView>> {
    const on = new Conditions('sponsor.department_id')
      .add('sponsor.id = any(?::uuid[])', query.id)
      .add('sponsor.category_id = ?', query.categoryId)
      .add('sponsor.status = ?', query.status)
      .add('sponsor.caller_person_id = ?', query.callerPersonId)
      .when(query.isLost, 'sponsor.lost_on is not null')
      .when(query.isLost === false, 'sponsor.lost_on is null')
      .add('(sponsor.name ilike ? or sponsor.contact_name ilike ?)', contains(query.q));
    const [count] = await this.work.sql<{ total: number }>(`select count(*) as total from ${FROM} where ${on.where}`, on.parameters);
    const data = await this.work.sql<SponsorView>(`select ${VIEW} from ${FROM} where ${on.where} ${pageOf(query, SORTS, 'sponsor.id')}`, on.parameters);
    return { data, total: count?.total ?? 0 };
  }

  async one(id: string): Promise<SponsorView> {
    if (!isId(id)) return refuse('not-found');
    const [row] = await this.work.sql<SponsorView>(`select ${VIEW} from ${FROM} where sponsor.department_id = $1 and sponsor.id = $2`, [id]);
    return row ?? refuse('not-found');
  }

  async add(form: SponsorDto): Promise<SponsorView> {
    await this.checkCaller(form.callerPersonId);
    const [row] = await this.work.insert(Sponsor, form);
    return this.one(row!.id);
  }

  async change(id: string, version: number, form: ChangeSponsorDto): Promise<SponsorView> {
    await this.checkCaller(form.callerPersonId);
    await this.work.update(Sponsor, id, version, form);
    return this.one(id);
  }

  private async checkCaller(personId: string | null | undefined): Promise<void> {
    if (personId && !(await this.work.first(Membership, { personId, endedOn: IsNull() }))) refuse('unknown-person', {}, { callerPersonId: 'is not a person of the department' });
  }
}
