import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import type { Day } from '../../domain/day.ts';
import { assertOfferMove, offerStateOn } from '../../domain/sponsorship/offers/offer-moves.ts';
import type { OfferMove } from '../../domain/sponsorship/offers/offer-moves.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { OfferLine } from './offer-line.entity.ts';
import { Offer } from './offer.entity.ts';

export interface OfferRecord {
  offer: Offer;
  /** in their places: reads, then other benefits */
  lines: OfferLine[];
}

/** An offer with its lines, as rows. */
@Injectable()
export class OfferRecords {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  /** @throws Refused `not-found` */
  async load(id: string): Promise<OfferRecord> {
    const offer = await this.work.one(Offer, id);
    return { offer, lines: await this.work.find(OfferLine, { offerId: offer.id }, { order: { place: 'ASC' } }) };
  }

  /** The same, locked until the unit ends. */
  async lock(id: string): Promise<OfferRecord> {
    const offer = await this.work.one(Offer, id);
    await this.work.lock(Offer, [offer.id]);
    return this.load(offer.id);
  }

  /** Locked, where its state allows the move today. @throws Refused with the reason of `OFFER_MOVES` */
  async lockFor(move: OfferMove, id: string): Promise<OfferRecord & { today: Day }> {
    const record = await this.lock(id);
    const today = await this.departments.today();
    assertOfferMove(move, offerStateOn(record.offer, today), record.offer.lapsesOn);
    return { ...record, today };
  }
}
