import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import type { Day } from '../../domain/day.ts';
import { addDays, daysBetween } from '../../domain/day.ts';
import { refuse, sentenceOfRefusal } from '../../domain/refusals.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { DealCompany } from './deal-company.service.ts';
import type { DeclineOfferDto, ExtendOfferDto } from './offer-life.dto.ts';
import { OfferRecords } from './offer-records.service.ts';
import { OfferViews } from './offer-views.service.ts';
import { Offer } from './offer.entity.ts';
import { OfferService } from './offer.service.ts';

/** Days an offer holds where nobody said how long. Common practice, no source. */
const USUAL_DAYS = 14;

/** What happens to an offer besides being put and being taken up. */
@Injectable()
export class OfferLife {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(OfferRecords) private readonly records: OfferRecords,
    @Inject(OfferViews) private readonly views: OfferViews,
    @Inject(OfferService) private readonly offers: OfferService,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(DealCompany) private readonly company: DealCompany,
  ) {}

  /** @throws Refused `offer-not-put`, `offer-already-accepted`, `offer-declined`, `offer-withdrawn` */
  async withdraw(id: string): Promise<void> {
    const { offer, today } = await this.records.lockFor('withdraw', id);
    await this.work.update(Offer, offer.id, null, { withdrawnOn: today });
  }

  /** @throws Refused as `withdraw` does */
  async decline(id: string, { reason, declinedOn }: DeclineOfferDto): Promise<void> {
    const { offer, today } = await this.records.lockFor('decline', id);
    await this.work.update(Offer, offer.id, null, { declinedReason: reason, declinedOn: (declinedOn ?? today) as Day });
  }

  /** @throws Refused `offer-lapsed-already`, `offer-lapses-no-later` */
  async extend(id: string, { lapsesOn }: ExtendOfferDto): Promise<void> {
    const { offer } = await this.records.lockFor('extend', id);
    if (lapsesOn <= offer.lapsesOn) {
      const details = { lapsesOn: offer.lapsesOn };
      refuse('offer-lapses-no-later', details, { lapsesOn: sentenceOfRefusal('offer-lapses-no-later', details) });
    }
    await this.work.update(Offer, offer.id, null, { lapsesOn: lapsesOn as Day });
  }

  /** A new draft with the same lines, which holds for as many days as the old one did; the old one stays as it is. */
  async offerAgain(id: string): Promise<string> {
    const { offer } = await this.records.load(id);
    const { readLines, benefitLines } = await this.views.one(id);
    const { sponsorId, sellerId, payerId, seasonId, packageId, title, pricing, priceCents, billAtLeastCents, billAtMostCents } = offer;
    const { priceVariesWith, cancelledGamePolicy, billingPlan, startsOn, endsOn, years, increaseBasisPoints, holdsInventory, note } = offer;
    const days = offer.putOn === null ? USUAL_DAYS : Math.max(1, daysBetween(offer.putOn, offer.lapsesOn));
    const lapsesOn = addDays(await this.departments.today(), days);
    const form = { sponsorId, sellerId, payerId, seasonId, packageId, title, pricing, priceCents, billAtLeastCents, billAtMostCents, priceVariesWith, cancelledGamePolicy, startsOn, endsOn, years, increaseBasisPoints, holdsInventory, note, lapsesOn };
    const anew = <Line>(line: Line): Line => ({ ...line, id: null });
    const draft = await this.offers.add({ ...form, billingPlan: billingPlan as never, readLines: readLines.map(anew), benefitLines: benefitLines.map(anew) });
    await this.company.copy(id, draft.id);
    return draft.id;
  }
}
