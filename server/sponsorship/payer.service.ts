import { Inject, Injectable } from '@nestjs/common';
import { refuse } from '../domain/refusals.ts';
import { isId } from '../platform/database/ids.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { Conditions, contains, pageOf } from '../platform/http/lists.ts';
import type { Listed } from '../platform/http/lists.ts';
import type { ChangePayerDto, PayerDto, PayerListQuery, PayerView } from './payer.dto.ts';
import { Payer } from './payer.entity.ts';

const VIEW = `payer.id, payer.sponsor_id as "sponsorId", sponsor.name as "sponsorName", payer.name, payer.email, payer.address,
  payer.exemption_number as "exemptionNumber", payer.exemption_expires_on as "exemptionExpiresOn", payer.version`;
const FROM = `payer left join sponsor on sponsor.department_id = payer.department_id and sponsor.id = payer.sponsor_id`;
const SORTS = { name: 'payer.name collate "und-x-icu"', sponsorName: 'sponsor.name collate "und-x-icu"' };

@Injectable()
export class PayerService {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async list(query: PayerListQuery): Promise<Listed<PayerView>> {
    const on = new Conditions('payer.department_id')
      .add('payer.id = any(?::uuid[])', query.id)
      .add('payer.sponsor_id = ?', query.sponsorId)
      .add('payer.name ilike ?', contains(query.q));
    const [count] = await this.work.sql<{ total: number }>(`select count(*) as total from ${FROM} where ${on.where}`, on.parameters);
    const data = await this.work.sql<PayerView>(`select ${VIEW} from ${FROM} where ${on.where} ${pageOf(query, SORTS, 'payer.id')}`, on.parameters);
    return { data, total: count?.total ?? 0 };
  }

  async one(id: string): Promise<PayerView> {
    if (!isId(id)) return refuse('not-found');
    const [row] = await this.work.sql<PayerView>(`select ${VIEW} from ${FROM} where payer.department_id = $1 and payer.id = $2`, [id]);
    return row ?? refuse('not-found');
  }

  async add(form: PayerDto): Promise<PayerView> {
    const [row] = await this.work.insert(Payer, form);
    return this.one(row!.id);
  }

  async change(id: string, version: number, form: ChangePayerDto): Promise<PayerView> {
    await this.work.update(Payer, id, version, form);
    return this.one(id);
  }
}
