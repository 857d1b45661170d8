import { amountText, centsOf } from '../money.ts';
import { refuse } from '../refusals.ts';
import type { MissedAndClaimed } from './missed-reads.ts';
import { fewestInstead } from './repair-options.ts';
import type { Remedy } from './repair-options.ts';

export const PROPOSAL_BECAUSE = ['windowOver', 'gameCancelled', 'seasonEnding', 'asked'] as const;
export type ProposalBecause = (typeof PROPOSAL_BECAUSE)[number];

/** Where a proposal stands, as a person would say it. */
export const PROPOSAL_STANDINGS = ['open', 'waitingForAnswer', 'toBePlaced', 'toBeGiven', 'waitingForContract', 'settled', 'declined', 'withdrawn'] as const;
export type ProposalStanding = (typeof PROPOSAL_STANDINGS)[number];

export const STANDING_WORDS: Readonly<Record<ProposalStanding, string>> = {
  open: 'still open', waitingForAnswer: 'waiting for an answer', toBePlaced: 'agreed', toBeGiven: 'agreed', waitingForContract: 'agreed',
  settled: 'settled', declined: 'declined', withdrawn: 'withdrawn',
};

/** Why they are short, of several the one that weighs most: the season, then a game, then a window. */
export function becauseOf(missed: readonly Pick<MissedAndClaimed, 'because'>[], isShort: boolean): ProposalBecause {
  if (!isShort) return 'asked';
  return (['seasonEnding', 'gameCancelled'] as const).find((because) => missed.some((read) => read.because === because)) ?? 'windowOver';
}

/**
 * The missed reads that one proposal speaks for: all of one count, each still unspoken for, never more than are owed.
 *
 * @param open how many of their count are owed and not spoken for
 * @throws Refused `missed-read-claimed-twice`, `missed-reads-of-two-games`, `more-missed-than-owed`
 */
export function checkMissed(missed: readonly MissedAndClaimed[], open: number): void {
  if (missed.some((read) => read.proposalId !== null)) refuse('missed-read-claimed-twice');
  if (new Set(missed.map((read) => read.slotId)).size > 1) refuse('missed-reads-of-two-games');
  if (missed.length > open) refuse('more-missed-than-owed', { owed: open });
}

/** What is given instead, at a rate-card value of at least that of the missed reads. */
export interface Instead {
  readonly missed: number;
  /** of one missed read, cents */
  readonly priceCents: number;
  /** of one read given instead, by the season's rate card, cents; null where it is not on it */
  readonly otherCents: number | null;
  /** asked for; absent: as few as will do */
  readonly reads: number | null;
}

/** @throws Refused `makegood-kind-without-price`, `makegood-worth-less` */
export function readsInstead({ missed, priceCents, otherCents, reads }: Instead): number {
  const fewest = fewestInstead(missed, priceCents, otherCents ?? 0) ?? refuse('makegood-kind-without-price');
  if (reads !== null && reads < fewest) refuse('makegood-worth-less', { least: fewest, missed: amountText(centsOf(missed * priceCents)) });
  return reads ?? fewest;
}

/**
 * Of N missed reads for which M are given, missed read i settles when this replacement is given: ⌈i × M / N⌉.
 *
 * @param place of the missed read, from 1
 * @source LEDGER.md, section 2, row 15
 */
export function settledByReplacement(place: number, missed: number, replacements: number): number {
  return Math.ceil((place * replacements) / missed);
}

export interface ProposalToSay {
  readonly remedy: Remedy;
  readonly missedReads: number;
  readonly readKindName: string;
  readonly replacementReads: number | null;
  readonly replacementReadKindName: string | null;
  readonly amountCents: number | null;
}

/** What is proposed, in one sentence that a sponsor is shown. */
export function proposalInWords({ remedy, missedReads, readKindName, replacementReads, replacementReadKindName, amountCents }: ProposalToSay): string {
  const missed = `${missedReads} missed ${missedReads === 1 ? 'read' : 'reads'} (${readKindName})`;
  const more = replacementReads === 1 ? '1 read' : `${replacementReads} reads`;
  const money = `$${amountText(centsOf(amountCents ?? 0))}`;
  if (remedy === 'credit') return `A credit of ${money} for ${missed}.`;
  if (remedy === 'carryOver') return `${missed} ${missedReads === 1 ? 'goes' : 'go'} on into the next contract${amountCents ? `, with the value of ${money}` : ''}.`;
  if (remedy === 'moreReads') return `${replacementReads} more ${replacementReads === 1 ? 'read' : 'reads'} of the same kind for ${missed}.`;
  return `${more} of another kind (${replacementReadKindName}) for ${missed}.`;
}
