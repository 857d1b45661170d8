import type { Day } from '../../day.ts';
import { refuse } from '../../refusals.ts';
import type { RefusalCode } from '../../refusals.ts';

/** As stored: what was done to the offer. */
export type StoredOfferState = 'draft' | 'open' | 'declined' | 'withdrawn' | 'accepted';

export const OFFER_STATES = ['draft', 'open', 'lapsed', 'declined', 'withdrawn', 'accepted'] as const;
export type OfferState = (typeof OFFER_STATES)[number];

export type OfferMove = 'change' | 'delete' | 'put' | 'extend' | 'withdraw' | 'decline' | 'accept' | 'draftContract';

/** An open offer has lapsed once its last day is over. */
export function offerStateOn(offer: { readonly state: StoredOfferState; readonly lapsesOn: Day }, today: Day): OfferState {
  return offer.state === 'open' && offer.lapsesOn < today ? 'lapsed' : offer.state;
}

/** What may be done to an offer in which state, or why not. */
export const OFFER_MOVES: Readonly<Record<OfferMove, Readonly<Record<OfferState, 'yes' | RefusalCode>>>> = {
  change: { draft: 'yes', open: 'offer-not-a-draft', lapsed: 'offer-not-a-draft', declined: 'offer-not-a-draft', withdrawn: 'offer-not-a-draft', accepted: 'offer-not-a-draft' },
  delete: { draft: 'yes', open: 'offer-not-a-draft', lapsed: 'offer-not-a-draft', declined: 'offer-not-a-draft', withdrawn: 'offer-not-a-draft', accepted: 'offer-not-a-draft' },
  put: { draft: 'yes', open: 'offer-already-put', lapsed: 'offer-already-put', declined: 'offer-already-put', withdrawn: 'offer-already-put', accepted: 'offer-already-put' },
  extend: { draft: 'offer-not-put', open: 'yes', lapsed: 'offer-lapsed-already', declined: 'offer-declined', withdrawn: 'offer-withdrawn', accepted: 'offer-already-accepted' },
  withdraw: { draft: 'offer-not-put', open: 'yes', lapsed: 'yes', declined: 'offer-declined', withdrawn: 'offer-withdrawn', accepted: 'offer-already-accepted' },
  decline: { draft: 'offer-not-put', open: 'yes', lapsed: 'yes', declined: 'offer-declined', withdrawn: 'offer-withdrawn', accepted: 'offer-already-accepted' },
  accept: { draft: 'offer-not-put', open: 'yes', lapsed: 'offer-lapsed', declined: 'offer-declined', withdrawn: 'offer-withdrawn', accepted: 'offer-already-accepted' },
  draftContract: { draft: 'offer-not-put', open: 'yes', lapsed: 'offer-lapsed', declined: 'offer-declined', withdrawn: 'offer-withdrawn', accepted: 'offer-already-accepted' },
};

/** @throws Refused with the reason in the table */
export function assertOfferMove(move: OfferMove, state: OfferState, lapsesOn: Day): void {
  const answer = OFFER_MOVES[move][state];
  if (answer !== 'yes') refuse(answer, { lapsesOn });
}
