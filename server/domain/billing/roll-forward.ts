import type { Cents } from '../money.ts';
import { centsOf } from '../money.ts';
import type { HappeningKind } from '../sponsorship/happening.ts';

/** What can move the contract balance, in the order of the report. */
export const ROLL_COLUMNS = ['takenOver', 'billed', 'goodsReceived', 'carried', 'earned', 'kept', 'allowed', 'credited', 'voided'] as const;
export type RollColumn = (typeof ROLL_COLUMNS)[number];

/**
 * Which column what is left of a happening's move belongs to, once the revenue in it is taken out. What only earns has no
 * column of its own: if something were left, it would stand as a difference.
 */
const COLUMN_OF: Readonly<Partial<Record<HappeningKind, RollColumn>>> = {
  openingPosition: 'takenOver',
  invoiced: 'billed',
  invoiceVoided: 'voided',
  goodsReceived: 'goodsReceived',
  carriedOut: 'carried',
  carriedIn: 'carried',
  allowanceGiven: 'allowed',
  discountTaken: 'allowed',
  amended: 'credited',
  swapped: 'credited',
  priceLowered: 'credited',
  readsCredited: 'credited',
  gameCancelled: 'credited',
  ended: 'credited',
  overbillingCredited: 'credited',
};

/** All moves of one contract's balance by one kind of happening in a span, in cents; unearned revenue is above zero. */
export interface BalanceMove {
  kind: string;
  changeCents: number;
  /** sponsorship and in-kind revenue that these happenings earned, less what they took back */
  earnedCents: number;
  /** revenue without a read: forfeits, fees for ending, minimums, values nobody can read any more */
  keptCents: number;
}

export interface RollForward extends Record<RollColumn, Cents> {
  openingCents: Cents;
  closingCents: Cents;
  /** the closing less the opening and all columns; zero, or the books hold something this report does not know */
  differenceCents: Cents;
}

/**
 * Unearned revenue from one day to another: opening + taken over + billed + goods received + carried + earned + kept +
 * allowed + credited + voided = closing, each column signed as it moves the balance (what is earned, kept, credited and
 * voided lowers it). Above zero is unearned revenue, below zero what is earned and not billed yet.
 *
 * @param openingCents the balance before the first day @param closingCents that at the end of the last, each taken from the postings alone
 * @source ASC 606-10-50-8 (opening and closing balances); the columns are common practice, no source
 */
export function rollForwardOf(openingCents: number, moves: readonly BalanceMove[], closingCents: number): RollForward {
  const sums = Object.fromEntries(ROLL_COLUMNS.map((column) => [column, 0])) as Record<RollColumn, number>;
  for (const { kind, changeCents, earnedCents, keptCents } of moves) {
    sums.earned -= earnedCents;
    sums.kept -= keptCents;
    const column = COLUMN_OF[kind as HappeningKind];
    if (column) sums[column] += changeCents + earnedCents + keptCents;
  }
  const explained = ROLL_COLUMNS.reduce((sum, column) => sum + sums[column], openingCents);
  const columns = Object.fromEntries(ROLL_COLUMNS.map((column) => [column, centsOf(sums[column])])) as Record<RollColumn, Cents>;
  return { openingCents: centsOf(openingCents), ...columns, closingCents: centsOf(closingCents), differenceCents: centsOf(closingCents - explained) };
}
