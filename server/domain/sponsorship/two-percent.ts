import { addCents, centsOf, subtractCents } from '../money.ts';
import type { Cents } from '../money.ts';

export interface TwoPercent {
  /** two percent of the payment, rounded down to the cent */
  readonly lineCents: Cents;
  /** the fair value of everything else the payer gets */
  readonly benefitsCents: Cents;
  /** the benefits stay within the line, so they count for nothing */
  readonly isDisregarded: boolean;
  /** what counts as a benefit given in return: nothing, or all of it, never only the part above the line */
  readonly returnCents: Cents;
  /** the part of the payment that may be a qualified sponsorship payment */
  readonly qualifiedCents: Cents;
}

/**
 * The two-percent line: what a payer gets besides being named is left out of account when all of it together is worth
 * no more than two percent of the payment. Above that the whole value counts, not only the excess.
 *
 * @param paymentCents money, goods and services together
 * @param fairValues of every benefit of the payer in connection with the payment, in the organization's taxable year
 * @source 26 CFR 1.513-4(c)(2)(ii) and (d)(1)
 */
export function twoPercentOf(paymentCents: Cents, fairValues: readonly Cents[]): TwoPercent {
  const benefitsCents = addCents(...fairValues);
  const lineCents = centsOf(Math.floor(paymentCents / 50));
  const isDisregarded = benefitsCents <= lineCents;
  const returnCents = isDisregarded ? centsOf(0) : benefitsCents;
  const qualifiedCents = returnCents >= paymentCents ? centsOf(0) : subtractCents(paymentCents, returnCents);
  return { lineCents, benefitsCents, isDisregarded, returnCents, qualifiedCents };
}
