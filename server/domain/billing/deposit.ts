import type { Day } from '../day.ts';
import { MONEY } from '../ledger/account.ts';
import type { Posting } from '../ledger/posting.ts';
import type { Cents } from '../money.ts';
import { amountText, centsOf } from '../money.ts';
import { refuse } from '../refusals.ts';

/** What a deposit slip says. */
export interface Deposit {
  depositedOn: Day;
  /** what the payments on the slip add up to */
  expectedCents: number;
  /** what was counted and given to the bank */
  countedCents: number;
  note?: string | null;
  /** when the payments on it were received */
  receivedOn: readonly Day[];
}

const post = (to: string, from: string, amount: number): Posting => ({ journal: 'money', from, to, amount });

/** What was counted less what was expected, in cents: above zero is over, below is short. */
export function overOrShort(expectedCents: number, countedCents: number): Cents {
  return centsOf(countedCents - expectedCents);
}

/**
 * Refuses a deposit slip that says too little, or takes to the bank what was not there yet.
 *
 * @throws Refused `amount-not-above-zero`, `over-or-short-without-note`, `deposited-before-received`
 * @source common practice of cash handling, no source
 */
export function checkDeposit({ depositedOn, expectedCents, countedCents, note, receivedOn }: Deposit): void {
  if (!Number.isSafeInteger(expectedCents) || expectedCents <= 0) refuse('amount-not-above-zero');
  const differenceCents = overOrShort(expectedCents, countedCents);
  if (differenceCents !== 0 && !note?.trim()) {
    const difference = amountText(centsOf(Math.abs(differenceCents)));
    refuse('over-or-short-without-note', { difference, way: differenceCents > 0 ? 'more' : 'less' });
  }
  if (receivedOn.some((day) => day > depositedOn)) refuse('deposited-before-received');
}

/**
 * What lay in the drawer goes to the bank: cash by what was counted, the drawer by what was expected, the rest to cash
 * over and short (over is a credit, short a debit).
 *
 * @throws Refused `amount-not-above-zero`
 * @source common practice of cash handling, no source
 */
export function receiptsDeposited(expectedCents: Cents, countedCents: Cents): Posting[] {
  if (expectedCents <= 0 || countedCents < 0) refuse('amount-not-above-zero');
  const postings = [
    post(MONEY.cash, MONEY.undepositedReceipts, Math.min(expectedCents, countedCents)),
    post(MONEY.cash, MONEY.cashOverShort, countedCents - expectedCents),
    post(MONEY.cashOverShort, MONEY.undepositedReceipts, expectedCents - countedCents),
  ];
  return postings.filter((posting) => posting.amount > 0);
}
