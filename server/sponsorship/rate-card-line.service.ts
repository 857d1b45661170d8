import { Inject, Injectable } from '@nestjs/common';
import { rateCardCopy } from '../domain/sponsorship/packages/rate-card-copy.ts';
import { refuse, sentenceOfRefusal } from '../domain/refusals.ts';
import { isId } from '../platform/database/ids.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { Conditions, contains, pageOf } from '../platform/http/lists.ts';
import type { Listed } from '../platform/http/lists.ts';
import { Season } from '../season/season.entity.ts';
import { MOST_RATE_CENTS } from './amounts.ts';
import type { ChangeRateCardLineDto, CopyRateCardDto, RateCardCopyView, RateCardLineDto, RateCardLineListQuery, RateCardLineView } from './rate-card-line.dto.ts';
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

  /** @throws Refused `rate-card-onto-itself`, `unknown-season`, `amount-too-large` */
  async copy({ fromSeasonId, toSeasonId, increaseBasisPoints = 0 }: CopyRateCardDto): Promise<RateCardCopyView> {
    if (fromSeasonId === toSeasonId) refuse('rate-card-onto-itself', {}, { toSeasonId: sentenceOfRefusal('rate-card-onto-itself') });
    for (const [field, id] of Object.entries({ fromSeasonId, toSeasonId })) {
      if (!(await this.work.first(Season, { id }))) refuse('unknown-season', {}, { [field]: sentenceOfRefusal('unknown-season') });
    }
    const [from, to] = [await this.ofSeason(fromSeasonId), await this.ofSeason(toSeasonId)];
    const { toCopy, alreadySet } = rateCardCopy(from, to, increaseBasisPoints);
    const raised = toCopy.map(({ readKindId, benefitName, priceCents }) => ({ seasonId: toSeasonId, readKindId, benefitName, priceCents }));
    if (raised.some((line) => line.priceCents > MOST_RATE_CENTS)) refuse('amount-too-large', {}, { increaseBasisPoints: sentenceOfRefusal('amount-too-large') });
    const rows = await this.work.insert(RateCardLine, raised);
    const after = await this.ofSeason(toSeasonId);
    return {
      copied: after.filter((line) => rows.some((row) => row.id === line.id)),
      left: alreadySet.map((line) => ({ name: nameOf(line), priceCents: line.priceCents, code: 'rate-already-set', sentence: sentenceOfRefusal('rate-already-set') })),
    };
  }

  private async ofSeason(seasonId: string): Promise<RateCardLineView[]> {
    return this.work.sql<RateCardLineView>(`select ${VIEW} from ${FROM} where rate_card_line.department_id = $1 and rate_card_line.season_id = $2 order by rate_card_line.price_cents desc, rate_card_line.id`, [seasonId]);
  }

  async change(id: string, version: number, form: ChangeRateCardLineDto): Promise<RateCardLineView> {
    await this.work.update(RateCardLine, id, version, form);
    return this.one(id);
  }
}

function nameOf({ readKindName, benefitName }: RateCardLineView): string {
  return readKindName ?? benefitName ?? '';
}
