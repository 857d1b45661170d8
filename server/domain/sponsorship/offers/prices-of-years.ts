import type { Cents } from '../../money.ts';
import { addCents, shareOfCents } from '../../money.ts';

/**
 * The price of each year of a deal: every year costs the year before and its increase, rounded half up to the cent.
 *
 * @param increaseBasisPoints hundredths of a percent; 300 is 3 %
 * @param years one or more
 * @returns cents, the first year first
 */
export function pricesOfYears(priceCents: Cents, increaseBasisPoints: number, years: number): Cents[] {
  const prices = [priceCents];
  while (prices.length < years) {
    const before = prices.at(-1)!;
    prices.push(addCents(before, shareOfCents(before, increaseBasisPoints)));
  }
  return prices;
}
