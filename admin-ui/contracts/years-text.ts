import { moneyText } from '../format/money.ts';

/** What each year costs from the first one named on, a line each, and by what it rises. */
export function yearsText(pricesOfYears: readonly number[], increaseBasisPoints: number, firstYear = 1): string {
  const years = pricesOfYears.map((cents, place) => `Year ${firstYear + place}: ${moneyText(cents)}`);
  return [...years, increaseBasisPoints === 0 ? 'No increase' : `${increaseBasisPoints / 100}% more each year, rounded to the cent, half a cent up`].join('\n');
}
