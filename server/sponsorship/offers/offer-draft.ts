import { NO_MONEY, centsOf } from '../../domain/money.ts';
import { Refused } from '../../domain/refusals.ts';
import { offeredValues } from '../../domain/sponsorship/offers/offered-values.ts';
import type { OfferedLine } from '../../domain/sponsorship/offers/offered-values.ts';
import { termsOfDraft } from '../../domain/sponsorship/terms-of-draft.ts';
import type { Draft, DraftGame } from '../../domain/sponsorship/terms-of-draft.ts';
import type { OfferRow, OfferedBenefit, OfferedRead } from './offer-view.ts';

/** An offer as the rule of signing reads a deal. */
export function draftOf(offer: OfferRow, reads: readonly OfferedRead[], benefits: readonly OfferedBenefit[]): Draft {
  return {
    dealId: offer.id,
    term: {
      startsOn: offer.startsOn,
      endsOn: offer.endsOn,
      pricing: offer.pricing,
      priceCents: centsOf(offer.priceCents),
      billAtLeastCents: offer.billAtLeastCents === null ? null : centsOf(offer.billAtLeastCents),
      billAtMostCents: offer.billAtMostCents === null ? null : centsOf(offer.billAtMostCents),
    },
    reads: reads.map((read) => ({ ...read, seasonId: offer.seasonId, rateCents: centsOf(read.rateCents), priceEachCents: read.priceEachCents === null ? null : centsOf(read.priceEachCents) })),
    benefits: benefits.map((benefit) => ({ ...benefit, rateCents: benefit.rateCents === null ? NO_MONEY : centsOf(benefit.rateCents) })),
    cancelledGamePolicy: offer.cancelledGamePolicy,
    isInKind: false,
  };
}

/** The values of a draft's lines, or why the price cannot be shared over them yet. */
export function valuesOrTrouble(draft: Draft, games: readonly DraftGame[]): { values: OfferedLine[]; valuesTrouble: { code: string; sentence: string } | null } {
  try {
    return { values: offeredValues(termsOfDraft(draft, games)), valuesTrouble: null };
  } catch (refused) {
    if (!(refused instanceof Refused)) throw refused;
    return { values: [], valuesTrouble: { code: refused.code, sentence: refused.message } };
  }
}
