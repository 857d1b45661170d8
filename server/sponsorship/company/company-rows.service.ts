import { Inject, Injectable } from '@nestjs/common';
import { refuse } from '../../domain/refusals.ts';
import type { CompanyThere, DealAsked, DealThere, ExclusiveRight, ReservedRight, RightTerms } from '../../domain/sponsorship/company/rights.ts';
import type { Day } from '../../domain/day.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { CompanyExceptionView } from './company.dto.ts';
import { DEALS_THERE, EXCEPTIONS_OF_DEALS, LET_IN_BESIDE, REACH_OF_CONTRACT, REACH_OF_OFFER, RESERVED, RIGHTS_OF_DEALS, STANDING_RIGHTS } from './company.sql.ts';

/** A contract or an offer that is to be made, by its row. */
export interface DealToCheck {
  kind: 'contract' | 'offer';
  dealId: string;
  sponsorId: string;
  startsOn: Day;
  endsOn: Day;
}

type RightOfDeal = RightTerms & { dealId: string };
type ExceptionOfDeal = CompanyExceptionView & { dealId: string; againstId: string };

/** The rows that say who may be read beside whom. */
@Injectable()
export class CompanyRows {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  /** @throws Refused `unknown-sponsor` */
  async asked({ kind, dealId, sponsorId, startsOn, endsOn }: DealToCheck): Promise<DealAsked> {
    const [category] = await this.work.sql<Pick<DealAsked, 'categoryId' | 'categoryName' | 'isBlocked'>>(
      `select category.id as "categoryId", category.name as "categoryName", category.is_blocked as "isBlocked" from sponsor
         join sponsor_category as category on category.department_id = sponsor.department_id and category.id = sponsor.category_id
        where sponsor.department_id = $1 and sponsor.id = $2`,
      [sponsorId],
    );
    const [reach] = await this.work.sql<Pick<DealAsked, 'schoolIds' | 'pinnedGameIds'>>(kind === 'contract' ? REACH_OF_CONTRACT : REACH_OF_OFFER, [dealId]);
    const rights = await this.rightsOf([dealId]);
    return { ...(category ?? refuse('unknown-sponsor')), ...reach!, sponsorId, startsOn, endsOn, rights };
  }

  /** Holds whoever makes a deal of these categories until this unit is done: of two exclusive sponsors one is told. Rows that only name a category do not wait. */
  async lockCategories(ids: readonly string[]): Promise<void> {
    await this.work.sql('select 1 from sponsor_category where department_id = $1 and id = any($2::uuid[]) order by id for no key update', [[...new Set(ids)].sort()]);
  }

  /** @param dealId the deal that is made or handed on: it is not in its own way */
  async there(categoryIds: readonly string[], today: Day, dealId: string): Promise<CompanyThere> {
    const ofThem = [[...new Set(categoryIds)]];
    const beside = new Set((await this.work.sql<{ dealId: string }>(LET_IN_BESIDE, [dealId])).map((one) => one.dealId));
    return {
      exclusive: (await this.standing(today)).filter((right) => categoryIds.includes(right.categoryId) && right.dealId !== dealId && !beside.has(right.dealId)),
      reserved: await this.work.sql<ReservedRight>(`${RESERVED} and reserved.category_id = any($2::uuid[]) order by reserved.starts_on, reserved.id`, ofThem),
      deals: (await this.work.sql<DealThere>(DEALS_THERE, [...ofThem, today])).filter((deal) => deal.dealId !== dealId),
    };
  }

  /** Rights of signed contracts, and of open offers that hold. */
  async standing(today: Day): Promise<(ExclusiveRight & { dealId: string })[]> {
    return this.work.sql<ExclusiveRight & { dealId: string }>(`${STANDING_RIGHTS} order by exclusivity.starts_on, exclusivity.id`, [today]);
  }

  /** @param dealIds of contracts and offers */
  async rightsOf(dealIds: readonly string[]): Promise<RightOfDeal[]> {
    return this.work.sql<RightOfDeal>(RIGHTS_OF_DEALS, [dealIds, dealIds]);
  }

  async exceptionsOf(dealIds: readonly string[]): Promise<ExceptionOfDeal[]> {
    return this.work.sql<ExceptionOfDeal>(EXCEPTIONS_OF_DEALS, [dealIds, dealIds]);
  }
}
