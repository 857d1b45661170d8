import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import type { Day } from '../../domain/day.ts';
import { refuse } from '../../domain/refusals.ts';
import { inTheWay } from '../../domain/sponsorship/company/in-the-way.ts';
import type { Obstacle } from '../../domain/sponsorship/company/in-the-way.ts';
import { obstacleInWords } from '../../domain/sponsorship/company/words.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { CompanyException } from './company-exception.entity.ts';
import { CompanyRows } from './company-rows.service.ts';
import type { DealToCheck } from './company-rows.service.ts';
import type { CompanyExceptionDto, ObstacleView } from './company.dto.ts';

/** Whose right is in the way of a deal, and who allowed it all the same. */
@Injectable()
export class CompanyCheck {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(CompanyRows) private readonly rows: CompanyRows,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  /**
   * Locks the categories concerned, records the exception that is given, and refuses what is in the way without one. The
   * block list is asked of offers; a contract asks it at its signing.
   *
   * @throws Refused `category-exclusive`, `category-reserved`, `category-blocked`
   */
  async refuseInTheWay({ exception, ...deal }: DealToCheck & { exception?: CompanyExceptionDto | null | undefined }): Promise<void> {
    const asked = await this.rows.asked(deal);
    await this.rows.lockCategories([asked.categoryId, ...asked.rights.map((right) => right.categoryId)]);
    const found = await this.obstacles(deal);
    const excepted = found.filter((one) => exception?.againstIds.includes(one.againstId));
    if (exception && excepted.length > 0) await this.record(deal, excepted, exception);
    refuseThose(deal, found.filter((one) => !excepted.includes(one)));
  }

  /** The same without writing or waiting: for what is only tried. */
  async tryInTheWay({ exception, ...deal }: DealToCheck & { exception?: CompanyExceptionDto | null | undefined }): Promise<void> {
    refuseThose(deal, (await this.obstacles(deal)).filter((one) => !exception?.againstIds.includes(one.againstId)));
  }

  /** What would be refused now, in words; changes nothing. */
  async obstaclesOf(deal: DealToCheck): Promise<ObstacleView[]> {
    const found = await this.obstacles(deal);
    return found.map((one) => ({ againstId: one.againstId, because: one.because, words: obstacleInWords(one) }));
  }

  /** Less what an exception was recorded against. */
  private async obstacles(deal: DealToCheck): Promise<Obstacle[]> {
    const asked = await this.rows.asked(deal);
    const there = await this.rows.there([asked.categoryId, ...asked.rights.map((right) => right.categoryId)], await this.departments.today(), deal.dealId);
    const recorded = new Set((await this.rows.exceptionsOf([deal.dealId])).map((one) => one.againstId));
    return inTheWay(asked, there).filter((one) => !recorded.has(one.againstId));
  }

  private async record({ kind, dealId }: DealToCheck, against: readonly Obstacle[], { reason, approvedByName, approvedOn }: CompanyExceptionDto): Promise<void> {
    const byId = new Map(against.map((one) => [one.againstId, one]));
    await this.work.insert(CompanyException, [...byId.values()].map((one) => ({
      contractId: kind === 'contract' ? dealId : null,
      offerId: kind === 'offer' ? dealId : null,
      exclusivityId: one.because === 'exclusive' ? one.againstId : null,
      againstDealId: one.because === 'dealThere' ? one.againstId : null,
      reservedCategoryId: one.because === 'reserved' ? one.againstId : null,
      blockedCategoryId: one.because === 'blocked' ? one.againstId : null,
      reason, approvedByName, approvedOn: approvedOn as Day, recordedByPersonId: this.work.personId,
    })));
  }
}

function refuseThose({ kind }: DealToCheck, all: readonly Obstacle[]): void {
  const found = all.filter((one) => kind === 'offer' || one.because !== 'blocked');
  const [first] = found;
  if (first === undefined) return;
  if (found.every((one) => one.because === 'blocked')) refuse('category-blocked', { category: first.because === 'blocked' ? first.categoryName : '' });
  const details = { words: [...new Set(found.map(obstacleInWords))].join('. '), against: [...new Set(found.map((one) => one.againstId))].join(',') };
  refuse(found.some((one) => one.because === 'exclusive' || one.because === 'dealThere') ? 'category-exclusive' : 'category-reserved', details);
}
