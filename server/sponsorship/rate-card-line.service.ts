import { Inject, Injectable } from '@nestjs/common';
import { refuse } from '../domain/refusals.ts';
import { isId } from '../platform/database/ids.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { Conditions, contains, pageOf } from '../platform/http/lists.ts';
import type { Listed } from '../platform/http/lists.ts';
import type { ChangeRateCardLineDto, RateCardLineDto, RateCardLineListQuery, RateCardLineView } from './rate-card-line.dto.ts';
import { RateCardLine } from './rate-card-line.entity.ts';

const VIEW = `rate_card_line.id, rate_card_line.season_id as "seasonId", season.name as "seasonName", rate_card_line.read_kind_id as "readKindId",
  read_kind.name as "readKindName", rate_card_line.benefit_name as "benefitName", rate_card_line.price_cents as "priceCents", rate_card_line.version`;
const FROM = `rate_card_line left join read_kind on read_kind.department_id = rate_card_line.department_id and read_kind.id = rate_card_line.read_kind_id
  join season on season.department_id = rate_card_line.department_id and season.id = rate_card_line.season_id`;
const SORTS = { readKindName: 'coalesce(read_kind.name, rate_card_line.benefit_name) collate "und-x-icu"', priceCents: 'rate_card_line.price_cents', seasonName: 'season.starts_on' };

@Injectable()
export class RateCardLineService {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async list(query: RateCardLineListQuery): Promise<Listed<RateCardLineView>> {
    const on = new Conditions('rate_card_line.department_id')
      .add('rate_card_line.id = any(?::uuid[])', query.id)
      .add('rate_card_line.season_id = ?', query.seasonId)
      .add('rate_card_line.read_kind_id = ?', query.readKindId)
      .add('coalesce(read_kind.name, rate_card_line.benefit_name) ilike ?', contains(query.q));
    const [count] = await this.work.sql<{ total: number }>(`select count(*) as total from ${FROM} where ${on.where}`, on.parameters);
    const data = await this.work.sql<RateCardLineView>(`select ${VIEW} from ${FROM} where ${on.where} ${pageOf(query, SORTS, 'rate_card_line.id')}`, on.parameters);
    return { data, total: count?.total ?? 0 };
  }

  async one(id: string): Promise<RateCardLineView> {
    if (!isId(id)) return refuse('not-found');
    const [row] = await this.work.sql<RateCardLineView>(`select ${VIEW} from ${FROM} where rate_card_line.department_id = $1 and rate_card_line.id = $2`, [id]);
    return row ?? refuse('not-found');
  }

  async add(form: RateCardLineDto): Promise<RateCardLineView> {
    const [row] = await this.work.insert(RateCardLine, form);
    return this.one(row!.id);
  }

  async change(id: string, version: number, form: ChangeRateCardLineDto): Promise<RateCardLineView> {
    await this.work.update(RateCardLine, id, version, form);
    return this.one(id);
  }
}
