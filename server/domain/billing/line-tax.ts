import { salesTaxOn } from '../ledger/sales-tax.ts';
import type { Cents } from '../money.ts';
import { addCents, centsOf, subtractCents } from '../money.ts';
import { priceEachOf } from '../sponsorship/contract-amounts.ts';
import type { BilledLine } from '../sponsorship/happening.ts';
import { isPricedByRead, priceByLine, sumOf } from '../sponsorship/line-values.ts';
import type { LinePosition, Position } from '../sponsorship/position.ts';
import { ordinalsOf } from '../sponsorship/slot-reads.ts';

/** A line as far as its tax goes. */
export type TaxedLine = Pick<BilledLine, 'amountCents' | 'taxableCents'>;

/**
 * Says of each line how much of it is taxed. A line that bills one commitment or benefit is taxed as that is; one over
 * the whole agreement (an installment, a deposit) by the taxed lines' share of the price, rounded half away from zero.
 * Together the taxed parts are never below zero: a deposit taken off reads that are not taxed gives back no tax.
 *
 * @source common practice, no source: what is taxed is the state's rule; the business office decides
 */
export function withTaxable(position: Position, lines: readonly BilledLine[]): BilledLine[] {
  if (position.lines.every((line) => line.terms.isTaxed !== false)) return [...lines];
  const untaxed = new Set(position.lines.filter((line) => line.terms.isTaxed === false).map((line) => line.terms.lineId));
  const share = taxedShare(position);
  let sum = 0;
  return lines.map((line) => {
    const own = line.lineId === undefined ? shareOf(line.amountCents, share) : untaxed.has(line.lineId) ? 0 : line.amountCents;
    const taxableCents = centsOf(Math.max(own, -sum));
    sum += taxableCents;
    return taxableCents === line.amountCents ? line : { ...line, taxableCents };
  });
}

function taxedShare(position: Position): { taxed: number; all: number } {
  const all = sumOf(position.lines.map(priceOf));
  const taxed = sumOf(position.lines.filter((line) => line.terms.isTaxed !== false).map(priceOf));
  return all === 0 ? signedShare(position) : { taxed, all };
}

/** Where no value is left (a fee after an early end), by what was signed; without a value there, by the number of lines. */
function signedShare({ terms }: Position): { taxed: number; all: number } {
  const prices = priceByLine(terms).map((cents, place) => cents + priceEachOf(terms.lines[place]!));
  const weights = prices.some((cents) => cents > 0) ? prices : prices.map(() => 1);
  return { taxed: sumOf(weights.filter((_, place) => terms.lines[place]!.isTaxed !== false)), all: sumOf(weights) };
}

const priceOf = (line: LinePosition) => (isPricedByRead(line.terms) ? priceEachOf(line.terms) * ordinalsOf(line) : sumOf(line.values));

function shareOf(amountCents: number, { taxed, all }: { taxed: number; all: number }): number {
  if (all === 0) return amountCents;
  const [whole, part] = [BigInt(all), BigInt(Math.abs(amountCents)) * BigInt(taxed) * 2n];
  return Math.sign(amountCents) * Number((part + whole) / (2n * whole));
}

/** The taxed part of a line; all of it where nothing else is said. */
export const taxableOf = (line: TaxedLine): Cents => line.taxableCents ?? line.amountCents;

/**
 * The tax of each line by cumulative rounding: the tax on all lines so far less what the lines before have, so that the
 * lines always re-add to the tax of the document. A line below zero has tax below zero.
 *
 * @param taxBasisPoints 500 is 5 %
 */
export function taxByLine(lines: readonly TaxedLine[], taxBasisPoints: number): Cents[] {
  let [taxable, tax] = [centsOf(0), centsOf(0)];
  return lines.map((line) => {
    taxable = addCents(taxable, taxableOf(line));
    const own = subtractCents(salesTaxOn(taxable, taxBasisPoints), tax);
    tax = addCents(tax, own);
    return own;
  });
}
