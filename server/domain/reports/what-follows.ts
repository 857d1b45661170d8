import type { Day } from '../day.ts';

/** What becomes of a sponsor after a term, in the order in which one would like it. */
export const FOLLOWS = ['signed', 'carriedOn', 'offered', 'drafted', 'yearsLeft', 'declined', 'lost', 'nothing'] as const;
export type Follows = (typeof FOLLOWS)[number];

export interface FollowingContract {
  id: string;
  number: string | null;
  title: string;
  isDraft: boolean;
  /** the next year of the same deal, or a renewal; null where it was drawn up by itself */
  followsAs: 'year' | 'renewal' | null;
  yearNumber: number;
}

export interface FollowingOffer {
  id: string;
  title: string;
  state: 'draft' | 'open' | 'accepted' | 'declined' | 'withdrawn' | 'lapsed';
  declinedReason: string | null;
}

export interface FollowFacts {
  /** of all the years, the first being 1 */
  yearNumber: number;
  years: number;
  /** the contract that follows this very one, else one of the sponsor's for the next season */
  contract: FollowingContract | null;
  /** the sponsor's offers for the next season, the newest first */
  offers: readonly FollowingOffer[];
  lostOn: Day | null;
  lostReason: string | null;
}

export interface WhatFollows {
  state: Follows;
  contractId: string | null;
  offerId: string | null;
  words: string;
}

/** What follows a term, and how it is told: a signed contract before all, an offer that lies with the sponsor before a draft. */
export function whatFollows({ yearNumber, years, contract, offers, lostOn, lostReason }: FollowFacts): WhatFollows {
  const told = (state: Follows, words: string, of: { contractId?: string; offerId?: string } = {}): WhatFollows => ({ state, contractId: of.contractId ?? null, offerId: of.offerId ?? null, words });
  const yearOf = (year: number) => `year ${year} of ${Math.max(years, year)}`;
  if (contract && !contract.isDraft) {
    const of = { contractId: contract.id };
    if (contract.followsAs === 'year') return told('carriedOn', `Carried on as ${yearOf(contract.yearNumber)}`, of);
    return told('signed', `${contract.followsAs === 'renewal' ? 'Renewed' : 'Signed again'}: ${contract.number ?? contract.title}`, of);
  }
  const open = offers.find((offer) => offer.state === 'open');
  if (open) return told('offered', `Offered: ${open.title}`, { offerId: open.id });
  if (contract) return told('drafted', contract.followsAs === 'year' ? `${capital(yearOf(contract.yearNumber))} is drawn up, not signed` : 'A contract is drawn up, not signed', { contractId: contract.id });
  const draft = offers.find((offer) => offer.state === 'draft');
  if (draft) return told('drafted', `An offer is drawn up: ${draft.title}`, { offerId: draft.id });
  if (yearNumber < years) return told('yearsLeft', `${capital(yearOf(yearNumber + 1))} comes next`);
  if (lostOn !== null) return told('lost', `Lost: ${lostReason ?? 'no reason was written down'}`);
  const gone = offers.find((offer) => offer.state === 'declined' || offer.state === 'lapsed');
  if (gone) return told('declined', gone.state === 'lapsed' ? `The offer lapsed: ${gone.title}` : `Declined: ${gone.declinedReason ?? gone.title}`, { offerId: gone.id });
  return told('nothing', 'Nothing yet');
}

const capital = (words: string): string => `${words[0]!.toUpperCase()}${words.slice(1)}`;
