import type { Day } from '../day.ts';
import type { Cents } from '../money.ts';
import { refuse } from '../refusals.ts';

/** How the reads of a commitment are counted. */
export type Counting = 'perTerm' | 'perGame' | 'perNight' | 'onOccurrence';

/** `fixed` lines share the contract's price; a `perRead` line earns its own price with each read given. */
export type Pricing = 'fixed' | 'perRead';

/** What becomes of the reads of a cancelled game that were counted for that game. */
export type CancelledGamePolicy = 'credit' | 'valueMovesOn';

/**
 * What the price goes up and down with. A payment that depends on attendance or on how many see or hear it is no
 * qualified sponsorship payment; one that depends only on the game being held is.
 *
 * @source 26 U.S.C. 513(i)(2)(B)(i)
 */
export const PRICE_VARIES_WITH = ['nothing', 'attendance', 'audience'] as const;
export type PriceVariesWith = (typeof PRICE_VARIES_WITH)[number];

/** The reads promised in one game (or night, whose id then stands in `gameId`). */
export interface GameReads {
  gameId: string;
  reads: number;
}

/** A commitment as it was signed. */
export interface ReadLine {
  kind: 'reads';
  /** the commitment's id */
  lineId: string;
  name: string;
  counting: Counting;
  pricing: Pricing;
  /** reads of the whole term (`perTerm`), or of each game or night; not used for `onOccurrence` */
  reads: number;
  /** `perGame`, `perNight`: the games or nights known at signing */
  games?: GameReads[];
  /** `onOccurrence`: reads owed even when fewer shots fall */
  readsAtLeast?: number;
  /** `onOccurrence`: reads owed at most, however many shots fall */
  readsAtMost?: number;
  /** `onOccurrence` at a fixed price without a minimum: the value is earned evenly over this many games */
  gamesPlanned?: number;
  /** stand-alone price of one read by the rate card */
  rateCents: Cents;
  /** `perRead`: the price of one read */
  priceEachCents?: Cents;
  /** `false` where no sales tax is charged on this line; absent: it is charged where the seller charges it */
  isTaxed?: false;
}

/** Another benefit as it was signed: a banner, a program page, passes. */
export interface BenefitLine {
  kind: 'benefit';
  /** the benefit's id */
  lineId: string;
  name: string;
  quantity: number;
  rateCents: Cents;
  earns: 'onDelivery' | 'overDays';
  /** `overDays`: first and last day over which it earns evenly */
  startsOn?: Day;
  endsOn?: Day;
  /** as in a read line */
  isTaxed?: false;
}

export type LineTerms = ReadLine | BenefitLine;

/** One term of a contract as it was signed. */
export interface ContractTerms {
  contractId: string;
  /** the price of all `fixed` lines together; 0 when every line is `perRead` */
  priceCents: Cents;
  /** the part of the price that is paid in goods, at fair value at signing */
  inKindCents?: Cents;
  /** for `perRead` lines together: least and most that is billed */
  billAtLeastCents?: Cents;
  billAtMostCents?: Cents;
  cancelledGame: CancelledGamePolicy;
  lines: LineTerms[];
}

/**
 * Refuses terms that cannot be signed.
 *
 * @throws Refused `contract-without-lines`, `price-without-rates`, `at-most-below-at-least`, `line-already-there`
 */
export function checkTerms(terms: ContractTerms): void {
  if (terms.lines.length === 0) refuse('contract-without-lines');
  if (new Set(terms.lines.map((line) => line.lineId)).size < terms.lines.length) refuse('line-already-there');
  if ((terms.billAtMostCents ?? Infinity) < (terms.billAtLeastCents ?? 0)) refuse('at-most-below-at-least');
  for (const line of terms.lines) {
    if (line.kind === 'reads' && (line.readsAtMost ?? Infinity) < (line.readsAtLeast ?? 0)) refuse('at-most-below-at-least');
  }
}
