import type { ContractTerms, LineTerms } from './contract-terms.ts';
import type { BilledLine } from './happening.ts';

/** A replacement agreed for reads that were missed: N missed for M given. */
export interface MakegoodPosition {
  makegoodId: string;
  missed: number;
  replacements: number;
  given: number;
  settled: number;
}

/** Plain counts of one commitment, or of one commitment in one game where it is counted per game or night. */
export interface SlotPosition {
  gameId?: string;
  /** by the signed terms and their amendments; for `onOccurrence` the least */
  promised: number;
  atMost?: number;
  occurrences: number;
  counted: number;
  makegoods: MakegoodPosition[];
  credited: number;
  released: number;
  forfeited: number;
  carriedOut: number;
  carriedIn: number;
  /** the promise where the contract ended before its time */
  endedAt?: number;
}

export interface LinePosition {
  terms: LineTerms;
  slots: SlotPosition[];
  /** cents by ordinal, first to last; empty for a line that is priced by the read */
  values: number[];
  /** games that earned their share, for an occurrence line without a minimum at a fixed price */
  gamesPlayed: string[];
  /** the day through which a benefit over days has earned */
  earnedThroughOn?: string;
}

/** An invoice as far as the contract is concerned; what was paid on it is the accounts office's affair. */
export interface BilledDocument {
  invoiceId: string;
  number: string;
  /** `opening` stands for what was billed before, `carried` for what was billed in the term before */
  kind: 'invoice' | 'opening' | 'carried';
  netCents: number;
  taxCents: number;
  /** net and tax given back by memos or carried into the next term */
  creditedCents: number;
  creditedTaxCents: number;
  carriedCents: number;
  discountCents: number;
  discountTaxCents: number;
  isVoid: boolean;
  lines: BilledLine[];
}

export interface MemoPart {
  /** absent where the part was paid in goods */
  invoiceId?: string;
  netCents: number;
  taxCents: number;
}

export interface MemoPosition {
  memoId: string;
  netCents: number;
  taxCents: number;
  parts: MemoPart[];
}

export interface CountedRead {
  lineId: string;
  gameId?: string;
  times: number;
  makegoodId?: string;
  invoiceId?: string;
}

/** The state of one contract (one term of it): what its happenings add up to. Amounts in cents, counts in reads. */
export interface Position {
  contractId: string;
  terms: ContractTerms;
  lines: LinePosition[];
  reads: Record<string, CountedRead>;
  occurrences: Record<string, { lineId: string; times: number }>;
  deliveries: Record<string, { lineId: string; quantity: number }>;
  documents: BilledDocument[];
  memos: MemoPosition[];
  /** kept without a read: forfeits, and values that could not move on */
  keptCents: number;
  feesCents: number;
  allowancesCents: number;
  billedCents: number;
  goodsCents: number;
  /** carry-over document and the billed part that left (+) or came in (-) */
  carries: { carryId: string; billedCents: number }[];
  minimumClaimed: boolean;
  minimumWaived: boolean;
  opening?: { earnedCashCents: number; earnedInKindCents: number; receivableCents: number; contractBalanceCents: number };
  ended: boolean;
  closed: boolean;
}
