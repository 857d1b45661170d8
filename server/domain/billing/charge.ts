import { MONEY } from '../ledger/account.ts';
import type { Posting } from '../ledger/posting.ts';
import type { Cents } from '../money.ts';
import { refuse } from '../refusals.ts';

/**
 * An invoice that belongs to no contract: a bank's fee passed on, or interest.
 *
 * @throws Refused `amount-not-above-zero`
 */
export function chargeInvoiced(invoiceId: string, amountCents: Cents): Posting[] {
  if (!Number.isSafeInteger(amountCents) || amountCents <= 0) refuse('amount-not-above-zero');
  return [{ journal: 'money', from: MONEY.feesAndInterest, to: MONEY.receivable, amount: amountCents, invoiceId }];
}
