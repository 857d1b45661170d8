import type { Cents } from '../money.ts';
import { centsOf, shareOfCents, subtractCents } from '../money.ts';

/**
 * Sales tax on a net amount, rounded once for the whole document, half away from zero.
 *
 * @param basisPoints 725 is 7.25 %
 * @source common practice, no source: the rule is the state's; the business office decides
 */
export function salesTaxOn(netCents: Cents, basisPoints: number): Cents {
  return shareOfCents(netCents, basisPoints);
}

/**
 * The tax of the next credit memo on an invoice: the invoice's tax times all that is credited so far, over its net,
 * rounded, less the tax credited before. So many small memos never give back a cent more or less than one large one.
 *
 * @param creditedCents net credited with this memo and before
 * @param creditedTaxCents tax credited before
 */
export function memoTaxOf(invoice: { netCents: Cents; taxCents: Cents }, creditedCents: Cents, creditedTaxCents: Cents): Cents {
  if (invoice.netCents === 0) return centsOf(0);
  const doubled = 2n * BigInt(invoice.taxCents) * BigInt(creditedCents);
  const net = BigInt(invoice.netCents);
  return subtractCents(centsOf(Number((doubled + net) / (2n * net))), creditedTaxCents);
}
