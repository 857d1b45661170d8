import { Inject, Injectable } from '@nestjs/common';
import { OfferViews } from '../../sponsorship/offers/offer-views.service.ts';
import type { OfferView } from '../../sponsorship/offers/offer-view.ts';
import type { OfferToSponsor } from './sponsor-page.dto.ts';

/** What was put to the sponsor and holds still; what lapsed, was declined or is being drawn up is left out. */
@Injectable()
export class OffersToSponsor {
  constructor(@Inject(OfferViews) private readonly offers: OfferViews) {}

  async of(sponsorId: string): Promise<OfferToSponsor[]> {
    return (await this.offers.list({ sponsorId, state: 'open', perPage: 50 })).data.map(shown);
  }
}

function shown({ id, number, title, priceCents, lapsesOn, readLines, benefitLines }: OfferView): OfferToSponsor {
  const reads = readLines.map((line) => (line.counting === 'onOccurrence' ? `${line.readKindName}, whenever it happens` : `${line.reads} × ${line.readKindName}${PER[line.counting]}`));
  return { id, number, title, priceCents, lapsesOn, lines: [...reads, ...benefitLines.map((line) => `${line.quantity} × ${line.name}`)] };
}

const PER: Readonly<Record<Exclude<OfferView['readLines'][number]['counting'], 'onOccurrence'>, string>> = { perTerm: '', perGame: ' a game', perNight: ' a night' };
