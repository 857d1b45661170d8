import { moneyText } from '../format/money.ts';

/** What each year costs, a line each, and by what it rises. */
export function yearsText(pricesOfYears: readonly number[], increaseBasisPoints: number): string {
  const years = pricesOfYears.map((cents, place) => `Year ${place + 1}: ${moneyText(cents)}`);
  return [...years, increaseBasisPoints === 0 ? 'No increase' : `${increaseBasisPoints / 100}% more each year, rounded to the cent, half a cent up`].join('\n');
}
