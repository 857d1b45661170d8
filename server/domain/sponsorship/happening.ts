import type { Day } from '../day.ts';
import type { Cents } from '../money.ts';
import type { ContractTerms, GameReads, LineTerms } from './contract-terms.ts';

/** A line of an invoice, traceable to what it bills. */
export interface BilledLine {
  text: string;
  amountCents: Cents;
  quantity?: number;
  unitCents?: Cents;
  /** the commitment or benefit whose reads are billed */
  lineId?: string;
  /** reads billed by this line */
  readIds?: string[];
  /** ordinals of the line that are billed, first and last */
  fromOrdinal?: number;
  toOrdinal?: number;
  /** the place (0, 1, …) of the installment that is billed */
  installment?: number;
  /** the played game that is billed */
  gameId?: string;
  /** the part of the amount that is taxed; absent: all of it */
  taxableCents?: Cents;
  isDeposit?: boolean;
  isMinimum?: boolean;
}

/** A change of one line by an amendment: reads more (or fewer) and what they add to (or take from) the price. */
export interface LineChange {
  lineId: string;
  /** per-game lines: the game whose reads change */
  gameId?: string;
  reads: number;
  priceCents: Cents;
}

/** Lowers a price that allowances stand on. */
export interface MayLowerPrice {
  /** set by whoever books it (`toldNow`), where reads are priced each: allowances fall with the price; absent in what was booked before that rule */
  allowancesFall?: true;
}

/** A memo's id is made by the caller before the rule runs; it stays unused where nothing billed has to be credited. */
export interface MayNeedMemo extends MayLowerPrice {
  memoId?: string;
  /** credit this invoice first; without it the latest one comes first */
  invoiceId?: string;
  /** in words, for the statement; no rule goes by it */
  reason?: string;
}

/**
 * Everything that can happen to a contract. Each is stored as it is (JSON), and a contract's state is what they add
 * up to. Amounts are cents; counts are whole reads.
 */
export type Happening =
  | { kind: 'signed'; terms: ContractTerms }
  | {
      kind: 'openingPosition';
      terms: ContractTerms;
      given: { lineId: string; gameId?: string; count: number }[];
      billedCents: Cents;
      paidCents: Cents;
      /** the document that stands for what was billed before */
      invoiceId: string;
    }
  | ({ kind: 'amended'; changes: LineChange[]; newLines?: { line: LineTerms; priceCents: Cents }[] } & MayNeedMemo)
  | ({
      kind: 'swapped';
      fromLineId: string;
      fromReads: number;
      toLineId: string;
      toReads: number;
      /** the line that is swapped in, where the contract does not have it yet */
      toLine?: LineTerms;
      /** what the swap adds to the price; below zero it lowers it */
      priceCents: Cents;
    } & MayNeedMemo)
  | ({ kind: 'priceLowered'; byCents: Cents } & MayNeedMemo)
  | { kind: 'readCounted'; readId: string; lineId: string; gameId?: string; times?: number }
  | { kind: 'readTakenBack'; readId: string }
  | { kind: 'occurrenceCounted'; occurrenceId: string; lineId: string; times?: number }
  | { kind: 'occurrenceTakenBack'; occurrenceId: string }
  | { kind: 'gamePlayed'; lineId: string; gameId: string }
  | { kind: 'gamePlayedTakenBack'; lineId: string; gameId: string }
  | { kind: 'makegoodAgreed'; makegoodId: string; lineId: string; gameId?: string; missed: number; replacements: number }
  | { kind: 'makegoodGiven'; makegoodId: string; readId: string }
  | ({ kind: 'readsCredited'; lineId: string; gameId?: string; count: number } & MayNeedMemo)
  | { kind: 'readsReleased'; lineId: string; gameId?: string; count: number; reason?: string }
  /** by which clause, and what notice was given of it */
  | { kind: 'readsForfeited'; lineId: string; gameId?: string; count: number; reason?: string; notice?: string }
  | ({ kind: 'gameCancelled'; gameId: string } & MayNeedMemo)
  | { kind: 'gameAdded'; gameId: string; lines: ({ lineId: string } & Pick<GameReads, 'reads'>)[] }
  | ({ kind: 'ended'; feeCents?: Cents; keepsMinimum?: boolean } & MayNeedMemo)
  | ({ kind: 'carriedOut'; carryId: string; toContractId: string; lineId: string; gameId?: string; count: number } & MayLowerPrice)
  | {
      kind: 'carriedIn';
      carryId: string;
      fromContractId: string;
      lineId: string;
      gameId?: string;
      count: number;
      /** the values that came along, one per read; none where the old line was priced by the read */
      valuesCents: number[];
      billedCents: Cents;
      taxCents: Cents;
    }
  | { kind: 'invoiced'; invoiceId: string; number: string; netCents: Cents; taxCents: Cents; lines: BilledLine[] }
  | { kind: 'invoiceVoided'; invoiceId: string; number: string }
  | ({ kind: 'allowanceGiven'; amountCents: Cents } & MayNeedMemo)
  | { kind: 'discountTaken'; invoiceId: string; amountCents: Cents; taxCents?: Cents }
  | ({ kind: 'overbillingCredited' } & MayNeedMemo)
  | { kind: 'minimumClaimed' }
  | { kind: 'benefitDelivered'; deliveryId: string; lineId: string; quantity: number }
  | { kind: 'benefitDeliveryTakenBack'; deliveryId: string }
  | { kind: 'benefitEarnedThrough'; lineId: string; throughOn: Day }
  | { kind: 'goodsReceived'; goodsId: string; amountCents: Cents; what: string }
  | { kind: 'closed'; receivableCents: Cents; unappliedCents: Cents }
  | { kind: 'reopened' };

export type HappeningKind = Happening['kind'];

export type HappeningOf<K extends HappeningKind> = Extract<Happening, { kind: K }>;
