import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import type { Day } from '../../domain/day.ts';
import { centsOf } from '../../domain/money.ts';
import { refuse } from '../../domain/refusals.ts';
import { pricesOfYears } from '../../domain/sponsorship/offers/prices-of-years.ts';
import { isId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Conditions, contains, pageOf } from '../../platform/http/lists.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { CoveredGames } from '../covered-games.service.ts';
import { draftOf, valuesOrTrouble } from './offer-draft.ts';
import type { OfferListQuery } from './offer.dto.ts';
import { BENEFIT_LINES, EXCEPTIONS, EXCLUSIVITIES, OFFER, OFFER_FROM, OFFER_SORTS, OFFER_STATE, READ_LINES } from './offer-view.sql.ts';
import type { OfferRow, OfferView, OfferedBenefit, OfferedException, OfferedExclusivity, OfferedRead } from './offer-view.ts';

/** Offers as they are shown: rows with their lines, and what each line is worth. */
@Injectable()
export class OfferViews {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(CoveredGames) private readonly covered: CoveredGames,
  ) {}

  async list(query: OfferListQuery): Promise<Listed<OfferView>> {
    const on = conditionsOf(query, await this.departments.today());
    const [count] = await this.work.sql<{ total: number }>(`select count(*) as total ${OFFER_FROM} where ${on.where}`, on.parameters);
    const rows = await this.work.sql<OfferRow>(`select ${OFFER} ${OFFER_FROM} where ${on.where} ${pageOf(query, OFFER_SORTS, 'offer.id')}`, on.parameters);
    return { data: await this.viewsOf(rows), total: count?.total ?? 0 };
  }

  /** @throws Refused `not-found` */
  async one(id: string): Promise<OfferView> {
    if (!isId(id)) return refuse('not-found');
    const today = await this.departments.today();
    const rows = await this.work.sql<OfferRow>(`select ${OFFER} ${OFFER_FROM} where offer.department_id = $1 and offer.id = $3`, [today, id]);
    const [view] = await this.viewsOf(rows);
    if (!view) return refuse('not-found');
    const games = await this.covered.ofReach([{ seasonId: view.seasonId, teamIds: view.readLines.flatMap((line) => line.teamIds) }]);
    return { ...view, ...valuesOrTrouble(draftOf(view, view.readLines, view.benefitLines), games) };
  }

  private async viewsOf(rows: readonly OfferRow[]): Promise<OfferView[]> {
    if (rows.length === 0) return [];
    const ids = rows.map((row) => row.id);
    const reads = await this.work.sql<OfferedRead>(READ_LINES, [ids]);
    const benefits = await this.work.sql<OfferedBenefit>(BENEFIT_LINES, [ids]);
    const exclusivities = await this.work.sql<OfferedExclusivity & { offerId: string }>(EXCLUSIVITIES, [ids]);
    const exceptions = await this.work.sql<OfferedException & { offerId: string }>(EXCEPTIONS, [ids]);
    return rows.map((row) => {
      const own = <Line extends { offerId: string }>(lines: readonly Line[]): Line[] => lines.filter((line) => line.offerId === row.id);
      const prices = pricesOfYears(centsOf(row.priceCents), row.increaseBasisPoints, row.years);
      return { ...row, readLines: own(reads), benefitLines: own(benefits), exclusivities: own(exclusivities), exceptions: own(exceptions), pricesOfYears: prices };
    });
  }
}

/** Today is `$2`, as `OFFER_STATE` has it. */
function conditionsOf(query: OfferListQuery, today: Day): Conditions {
  return new Conditions('offer.department_id')
    .add('?::date is not null', today)
    .add('offer.id = any(?::uuid[])', query.id)
    .add('offer.sponsor_id = ?', query.sponsorId)
    .add('offer.seller_id = ?', query.sellerId)
    .add('offer.season_id = ?', query.seasonId)
    .add(`${OFFER_STATE} = ?`, query.state)
    .when(query.lapsesSoon, `${OFFER_STATE} = 'open' and offer.lapses_on <= $2::date + 7`)
    .add('(offer.title ilike ? or offer.number ilike ? or sponsor.name ilike ?)', contains(query.q));
}
