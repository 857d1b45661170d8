import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { NumberService } from '../../access/number.service.ts';
import { checkPlanCovers } from '../../domain/billing/billing-plan.ts';
import { documentNumber } from '../../domain/billing/document-number.ts';
import type { Day } from '../../domain/day.ts';
import { fiscalYearOf } from '../../domain/day.ts';
import { refuse, sentenceOfRefusal } from '../../domain/refusals.ts';
import type { RefusalCode } from '../../domain/refusals.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { CompanyCheck } from '../company/company-check.service.ts';
import type { CompanyExceptionDto } from '../company/company.dto.ts';
import { OfferRecords } from './offer-records.service.ts';
import { OfferViews } from './offer-views.service.ts';
import { Offer } from './offer.entity.ts';

export interface PutOffer {
  putOn: Day;
  /** why it is put although the season cannot carry it; whoever calls has looked at who may */
  beyondPlacesReason?: string | null;
  /** whose right is gone past, why, and who approved it */
  companyException?: CompanyExceptionDto | null;
}

/** The moment a draft is put to the sponsor: from now on it has a number, and holds places where it is meant to. */
@Injectable()
export class OfferPutting {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(OfferRecords) private readonly records: OfferRecords,
    @Inject(OfferViews) private readonly views: OfferViews,
    @Inject(NumberService) private readonly numbers: NumberService,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(CompanyCheck) private readonly company: CompanyCheck,
  ) {}

  /**
   * Locks the draft, checks what can be known without the season's places, and gives it its number.
   *
   * @throws Refused `offer-already-put`, `offer-without-lines`, `offer-lapses-too-soon`, as signing would refuse the lines, and who is in the way
   */
  async markPut(id: string, { putOn, beyondPlacesReason = null, companyException = null }: PutOffer): Promise<void> {
    const { offer, lines, today } = await this.records.lockFor('put', id);
    if (lines.length === 0) refuse('offer-without-lines');
    if (offer.lapsesOn < putOn || offer.lapsesOn < today) {
      const details = { lapsesOn: offer.lapsesOn };
      refuse('offer-lapses-too-soon', details, { lapsesOn: sentenceOfRefusal('offer-lapses-too-soon', details) });
    }
    const { valuesTrouble } = await this.views.one(id);
    if (valuesTrouble) refuse(valuesTrouble.code as RefusalCode);
    checkPlanCovers(offer.billingPlan, offer.priceCents);
    const { sponsorId, startsOn, endsOn } = offer;
    await this.company.refuseInTheWay({ kind: 'offer', dealId: id, sponsorId, startsOn, endsOn, exception: companyException });
    const { fiscalYearStartsInMonth } = await this.departments.here();
    const fiscalYear = fiscalYearOf(putOn, fiscalYearStartsInMonth);
    const number = documentNumber('O', fiscalYear, await this.numbers.next('offer', null, fiscalYear));
    const beyond = beyondPlacesReason ? { beyondPlacesReason, beyondPlacesPersonId: this.work.personId } : {};
    await this.work.update(Offer, offer.id, null, { number, putOn, ...beyond });
  }
}
