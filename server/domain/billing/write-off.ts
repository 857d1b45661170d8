import type { Role } from '../access/rights.ts';
import { MONEY } from '../ledger/account.ts';
import type { Posting } from '../ledger/posting.ts';
import type { Cents } from '../money.ts';
import { amountText, centsOf } from '../money.ts';
import { refuse } from '../refusals.ts';

const post = (to: string, from: string, amount: number, invoiceId: string): Posting => ({ journal: 'money', from, to, amount, invoiceId });

/**
 * An invoice given up, gross of its tax. What was not earned is ended first, so that only what was earned is lost.
 *
 * @param contractBalanceCents the contract's balance; below zero something is billed and not earned
 * @throws Refused `write-off-before-ending`, `more-than-balance`, `amount-not-above-zero`
 */
export function invoiceWrittenOff(invoiceId: string, amountCents: Cents, balanceCents: number, contractBalanceCents: number): Posting[] {
  checkWithin(amountCents, balanceCents);
  if (contractBalanceCents < 0) refuse('write-off-before-ending');
  return [post(MONEY.badDebts, MONEY.receivable, amountCents, invoiceId)];
}

/**
 * A written-off invoice stands open again, because money comes after all or because a memo credits it. The payment
 * or memo then is applied as any other.
 *
 * @throws Refused `nothing-written-off`, `more-than-balance`
 */
export function writeOffReversed(invoiceId: string, amountCents: Cents, writtenOffCents: number): Posting[] {
  if (writtenOffCents <= 0) refuse('nothing-written-off');
  checkWithin(amountCents, writtenOffCents);
  return [post(MONEY.receivable, MONEY.badDebts, amountCents, invoiceId)];
}

/** How much of a memo first undoes a write-off: what the invoice's open balance cannot take. */
export function writeOffUndoneByMemo(memoGrossCents: number, balanceCents: number, writtenOffCents: number): Cents {
  return centsOf(Math.max(0, Math.min(writtenOffCents, memoGrossCents - balanceCents)));
}

function checkWithin(amountCents: number, roomCents: number): void {
  if (!Number.isSafeInteger(amountCents) || amountCents <= 0) refuse('amount-not-above-zero');
  if (amountCents > roomCents) refuse('more-than-balance', { balance: amountText(centsOf(roomCents)) });
}

/**
 * Who asks does not approve. In a small department one person may hold both offices, the director's and the
 * bookkeeper's; then they may, and the books say so.
 *
 * @throws Refused `write-off-needs-another`
 * @source common practice, no source
 */
export function checkApprover(asksAndApproves: boolean, roles: readonly Role[]): void {
  if (asksAndApproves && !(roles.includes('director') && roles.includes('bookkeeper'))) refuse('write-off-needs-another');
}
