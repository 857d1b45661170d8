import type { Balances } from '../ledger/balances.ts';
import { postingsBetween } from '../ledger/balances.ts';
import type { Posting } from '../ledger/posting.ts';
import { refuse } from '../refusals.ts';
import { amend, lowerOpenPrice, swap } from './apply-amending.ts';
import { allow, bill, claimMinimum, creditOverbilling, discount, receiveGoods, voidInvoice } from './apply-billing.ts';
import {
  agreeMakegood,
  countGamePlayed,
  countOccurrence,
  countRead,
  deliverBenefit,
  earnBenefitThrough,
  giveMakegood,
  takeBackDelivery,
  takeBackGamePlayed,
  takeBackOccurrence,
  takeBackRead,
} from './apply-counting.ts';
import { close, end, reopen } from './apply-ending.ts';
import { addGame, cancelGame, carryIn, carryOut, creditReads, forfeitReads, releaseReads } from './apply-settling.ts';
import { openedPosition, signedPosition } from './apply-signing.ts';
import { amountsOf } from './contract-amounts.ts';
import type { Happening, HappeningKind, HappeningOf } from './happening.ts';
import { fitValues } from './line-values.ts';
import type { Position } from './position.ts';
import { balancesOf } from './position-balances.ts';
import { toldNow } from './told-now.ts';

type Beginning = 'signed' | 'openingPosition';

const RULES: { [K in Exclude<HappeningKind, Beginning>]: (position: Position, happening: HappeningOf<K>) => void } = {
  amended: amend,
  swapped: swap,
  priceLowered: lowerOpenPrice,
  readCounted: countRead,
  readTakenBack: takeBackRead,
  occurrenceCounted: countOccurrence,
  occurrenceTakenBack: takeBackOccurrence,
  gamePlayed: countGamePlayed,
  gamePlayedTakenBack: takeBackGamePlayed,
  makegoodAgreed: agreeMakegood,
  makegoodGiven: giveMakegood,
  readsCredited: creditReads,
  readsReleased: releaseReads,
  readsForfeited: forfeitReads,
  gameCancelled: cancelGame,
  gameAdded: addGame,
  ended: end,
  carriedOut: carryOut,
  carriedIn: carryIn,
  invoiced: bill,
  invoiceVoided: voidInvoice,
  allowanceGiven: allow,
  discountTaken: discount,
  overbillingCredited: creditOverbilling,
  minimumClaimed: claimMinimum,
  benefitDelivered: deliverBenefit,
  benefitDeliveryTakenBack: takeBackDelivery,
  benefitEarnedThrough: earnBenefitThrough,
  goodsReceived: receiveGoods,
  closed: close,
  reopened: reopen,
};

/**
 * The state of a contract after one more happening; the state handed in is not touched.
 *
 * @param position `null` before signing
 * @throws Refused with the code of the rule that says no
 */
export function applyHappening(position: Position | null, happening: Happening): Position {
  return advance(position === null ? null : structuredClone(position), happening);
}

/** The state that happenings add up to, in their order; `null` when there is none. */
export function positionOf(happenings: Iterable<Happening>): Position | null {
  let position: Position | null = null;
  for (const happening of happenings) position = advance(position, happening);
  return position;
}

function advance(position: Position | null, happening: Happening): Position {
  if (happening.kind === 'signed' || happening.kind === 'openingPosition') {
    if (position) refuse('contract-already-signed');
    return happening.kind === 'signed' ? signedPosition(happening.terms) : openedPosition(happening);
  }
  if (!position) return refuse('contract-not-signed');
  if (position.closed && happening.kind !== 'reopened') refuse('contract-closed');
  const rule = RULES[happening.kind] as (position: Position, happening: Happening) => void;
  rule(position, happening);
  position.lines.forEach(fitValues);
  return position;
}

export interface BookedHappening {
  /** as it is to be stored */
  happening: Happening;
  position: Position;
  /** what moves in the three journals; may be empty */
  postings: Posting[];
  balances: Balances;
}

/**
 * Books one happening: the new state, and the postings that are the state after less the state before.
 *
 * @throws Refused as `applyHappening`
 */
export function bookHappening(position: Position | null, happening: Happening): BookedHappening {
  const told = toldNow(position, happening);
  const after = applyHappening(position, told);
  const balances = balancesOf(after);
  return { happening: told, position: after, balances, postings: postingsBetween(balancesOf(position), balances) };
}

/** What a happening does to the price, the billed and the credit memos; for an offer, before it is booked. */
export interface HappeningEffect {
  /** lowered price (+) or raised (-), cents */
  valueCents: number;
  /** the part that was not billed yet */
  unbilledCents: number;
  /** net, tax and gross of the memo that would be written; zero when none is */
  memoCents: number;
  memoTaxCents: number;
  memoGrossCents: number;
  /** the invoices the memo credits */
  memoParts: Position['memos'][number]['parts'];
}

/**
 * Tries a happening without booking it.
 *
 * @throws Refused as `applyHappening`, save that a memo's id need not be known yet
 */
export function effectOf(position: Position, happening: Happening): HappeningEffect {
  const tried = 'memoId' in happening && happening.memoId ? happening : ({ ...happening, memoId: 'tried' } as Happening);
  const after = applyHappening(position, toldNow(position, tried));
  const [before, then] = [amountsOf(position), amountsOf(after)];
  const memo = after.memos[position.memos.length];
  const valueCents = before.priceCents - then.priceCents;
  const memoCents = memo?.netCents ?? 0;
  const memoTaxCents = memo?.taxCents ?? 0;
  return {
    valueCents,
    unbilledCents: valueCents - memoCents,
    memoCents,
    memoTaxCents,
    memoGrossCents: memoCents + memoTaxCents,
    memoParts: memo?.parts ?? [],
  };
}

/**
 * What a carry-over takes along; the figures go into the happening `carriedIn` of the other contract.
 *
 * @throws Refused `more-than-owed`
 */
export function carriedFiguresOf(position: Position, happening: HappeningOf<'carriedOut'>) {
  return carryOut(structuredClone(position), toldNow(position, happening));
}
