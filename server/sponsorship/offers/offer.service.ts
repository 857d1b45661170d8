import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../../domain/day.ts';
import { refuse, sentenceOfRefusal } from '../../domain/refusals.ts';
import { newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { planOf } from '../billing-plan.dto.ts';
import { DealExclusivities } from '../company/deal-exclusivities.service.ts';
import type { BenefitDto, CommitmentDto } from '../contract-line.dto.ts';
import { OfferLine } from './offer-line.entity.ts';
import { OfferRecords } from './offer-records.service.ts';
import type { OfferView } from './offer-view.ts';
import { OfferViews } from './offer-views.service.ts';
import type { ChangeOfferDto, OfferDto } from './offer.dto.ts';
import { Offer } from './offer.entity.ts';

/** Writes drafts of offers; what was put to a sponsor changes only by what happens to it. */
@Injectable()
export class OfferService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(OfferRecords) private readonly records: OfferRecords,
    @Inject(OfferViews) private readonly views: OfferViews,
    @Inject(DealExclusivities) private readonly exclusivities: DealExclusivities,
  ) {}

  /** @throws Refused `already-there`, `ends-before-it-starts`, `unknown-…` for what the form names in vain */
  async add({ readLines = [], benefitLines = [], exclusivities = [], ...form }: OfferDto): Promise<OfferView> {
    const billingPlan = form.billingPlan ?? { kind: 'inFull' as const, on: form.startsOn };
    const [row] = await this.work.insert(Offer, offerOf({ ...form, billingPlan }));
    await this.writeLines(row!.id, readLines, benefitLines);
    await this.exclusivities.write({ offerId: row!.id }, exclusivities);
    return this.views.one(row!.id);
  }

  /** @throws Refused `offer-not-a-draft`, `stale-version` */
  async change(id: string, version: number, { readLines, benefitLines, exclusivities, ...form }: ChangeOfferDto): Promise<OfferView> {
    await this.records.lockFor('change', id);
    const before = await this.views.one(id);
    await this.work.update(Offer, id, version, offerOf({ startsOn: before.startsOn, endsOn: before.endsOn, ...form }));
    if (readLines || benefitLines) {
      await this.work.remove(OfferLine, { offerId: id });
      await this.writeLines(id, readLines ?? before.readLines, benefitLines ?? before.benefitLines);
    }
    if (exclusivities) await this.exclusivities.write({ offerId: id }, exclusivities);
    return this.views.one(id);
  }

  /** @throws Refused `offer-not-a-draft` */
  async remove(id: string): Promise<void> {
    const { offer } = await this.records.lockFor('delete', id);
    await this.work.remove(OfferLine, { offerId: offer.id });
    await this.exclusivities.write({ offerId: offer.id }, []);
    await this.work.remove(Offer, { id: offer.id });
  }

  private async writeLines(offerId: string, reads: readonly CommitmentDto[], benefits: readonly BenefitDto[]): Promise<void> {
    const rows = [...reads.map(readLineRow), ...benefits.map(benefitLineRow)];
    await this.work.insert(OfferLine, rows.map((row, place) => ({ ...row, offerId, place: place + 1 })));
  }
}

/** @throws Refused `ends-before-it-starts`, at the field of the form */
function offerOf({ billingPlan, ...form }: ChangeOfferDto): Partial<Offer> {
  if (form.startsOn !== undefined && form.endsOn !== undefined && form.endsOn < form.startsOn) {
    refuse('ends-before-it-starts', {}, { endsOn: sentenceOfRefusal('ends-before-it-starts') });
  }
  return { ...(form as Partial<Offer>), ...(billingPlan ? { billingPlan: planOf(billingPlan) } : {}) };
}

/** Only what the table has: a form may be a line as it was shown. */
function readLineRow(form: CommitmentDto): Partial<OfferLine> {
  const { id, readKindId, counting, reads, readsAtLeast, readsAtMost, whose, severalCountAsOne, rateCents, priceEachCents, isTaxed, startsOn, endsOn } = form;
  const { teamIds, levels, leastPerGame, mostPerGame, separation, windowKinds, blackoutDays, pinnedGameIds, priority } = form;
  return {
    id: id ?? newId(), readKindId, counting, quantity: reads ?? 0, readsAtLeast, readsAtMost, whose, severalCountAsOne, rateCents, priceEachCents, isTaxed,
    startsOn: startsOn as Day, endsOn: endsOn as Day, teamIds, levels, leastPerGame, mostPerGame, separation, windowKinds, blackoutDays: blackoutDays as Day[], pinnedGameIds, priority,
  } as Partial<OfferLine>;
}

function benefitLineRow(form: BenefitDto): Partial<OfferLine> {
  const { id, name, quantity, rateCents, fairValueCents, isTaxed, earns, startsOn, endsOn, dueOn } = form;
  return { id: id ?? newId(), benefitName: name, quantity: quantity ?? 1, rateCents, fairValueCents, isTaxed, earns: earns ?? 'onDelivery', startsOn, endsOn, dueOn } as Partial<OfferLine>;
}
