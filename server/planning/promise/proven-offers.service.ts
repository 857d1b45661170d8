import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../../domain/day.ts';
import { withoutVerdict } from '../../domain/planning/promise/answer-in-words.ts';
import { fittedLine } from '../../domain/planning/promise/fitted-line.ts';
import { refuse } from '../../domain/refusals.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { OfferView } from '../../sponsorship/offers/offer-view.ts';
import { OfferPutting } from '../../sponsorship/offers/offer-putting.service.ts';
import type { ChangeOfferDto } from '../../sponsorship/offers/offer.dto.ts';
import { OfferService } from '../../sponsorship/offers/offer.service.ts';
import { SeasonPlans } from '../proposals/season-plans.service.ts';
import { AskedDeals } from './asked-deals.service.ts';
import type { AskedOffer } from './asked-deals.service.ts';
import { PromiseChecks } from './promise-checks.service.ts';
import type { Checked, Prepared } from './promise-checks.service.ts';
import type { PutOfferDto } from './put-offer.dto.ts';

/** The season's facts may change while they are solved; then they are solved again. */
const TRIES = 4;

type PreparedOffer = Prepared & AskedOffer;

/** Offers are put to a sponsor once the season's places are proven, or set down to what fits. Outside a unit of work. */
@Injectable()
export class ProvenOffers {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(AskedDeals) private readonly deals: AskedDeals,
    @Inject(PromiseChecks) private readonly checks: PromiseChecks,
    @Inject(OfferPutting) private readonly putting: OfferPutting,
    @Inject(OfferService) private readonly offers: OfferService,
    @Inject(SeasonPlans) private readonly plans: SeasonPlans,
  ) {}

  /**
   * Proves the places, then puts the offer. The season's plan is locked while it is stored, and what was proven is only
   * stored on the very facts on which it was proven: of two offers that fit only one at a time, the second is refused.
   *
   * @throws Refused `not-found`, `offer-beyond-places` with the most that fits and what is full, `busy`, and as `OfferPutting.markPut`
   */
  async put(id: string, { putOn, beyondPlacesReason, companyException = null }: PutOfferDto, signal?: AbortSignal): Promise<OfferView> {
    const reason = beyondPlacesReason?.trim() || null;
    for (let attempt = 1; attempt <= TRIES; attempt += 1) {
      const prepared = await this.work.run(() => this.prepare(id));
      // Who is in the way is refused by name where the offer is put; here only the places are asked.
      const { view } = await this.checks.answer({ ...prepared, obstacles: [] }, signal);
      if (view.can !== 'yes' && reason === null) refuse('offer-beyond-places', { answer: withoutVerdict(view.sentence), because: view.because.join(' '), most: view.atLeast, asked: view.asked });
      const put = await this.work.run(async () => {
        await this.plans.lock(prepared.seasonId);
        const now = await this.prepare(id);
        if (now.facts.digest !== prepared.facts.digest || now.offer.version !== prepared.offer.version) return null;
        await this.putting.markPut(id, { putOn: putOn as Day, beyondPlacesReason: view.can === 'yes' ? null : reason, companyException });
        return (await this.deals.ofOffer(id)).offer;
      });
      if (put !== null) return put;
    }
    return refuse('busy');
  }

  /** Sets the reads of a draft down to what fits beside everything promised; its price stays. @throws Refused `offer-not-a-draft`, `stale-version`, `offer-fits-nothing` */
  async fit(id: string, version: number, signal?: AbortSignal): Promise<OfferView> {
    const prepared = await this.work.run(() => this.prepare(id));
    if (prepared.offer.state !== 'draft') refuse('offer-not-a-draft');
    const checked = await this.checks.answer(prepared, signal);
    const readLines = fittedReads(prepared, checked);
    if (readLines.length === 0) refuse('offer-fits-nothing');
    return this.work.run(() => this.offers.change(id, version, { readLines } as ChangeOfferDto));
  }

  private async prepare(id: string): Promise<PreparedOffer> {
    const asked = await this.deals.ofOffer(id);
    return { ...asked, ...(await this.checks.prepare(asked)) };
  }
}

/** The lines of an offer as far as they fit; a line of which nothing fits is taken out. */
function fittedReads({ offer }: PreparedOffer, { season, plan }: Checked): OfferView['readLines'] {
  return offer.readLines.flatMap((line) => {
    if (line.counting === 'onOccurrence') return [line];
    const promise = season.promises.find((one) => one.promiseId === line.id);
    const { reads, daysTakenOut } = fittedLine(promise, line.reads, line.counting !== 'perTerm', plan, season.games);
    return reads === 0 ? [] : [{ ...line, reads, blackoutDays: [...new Set([...line.blackoutDays, ...daysTakenOut])].toSorted() }];
  });
}
