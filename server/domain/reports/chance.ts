/** Chances of 0, 1, 2 … of something; together 1. */
export type Chances = readonly number[];

/** Sums that differ by less are the same. */
const TIE = 1e-12;

/** Chances of the sum of two counts that go their own ways. */
export function sumOfCounts(one: Chances, other: Chances): number[] {
  const sum = Array<number>(one.length + other.length - 1).fill(0);
  one.forEach((chance, count) => other.forEach((and, more) => { sum[count + more]! += chance * and; }));
  return sum;
}

/** Chances of what a count is turned into; several counts may come to the same. */
export function turnedInto(chances: Chances, into: (count: number) => number): number[] {
  const turned: number[] = [];
  chances.forEach((chance, count) => {
    const value = into(count);
    while (turned.length <= value) turned.push(0);
    turned[value]! += chance;
  });
  return turned;
}

export const expectedCount = (chances: Chances): number => chances.reduce((sum, chance, count) => sum + chance * count, 0);

/** That it is at least so many, between 0 and 1. */
export function chanceOfAtLeast(chances: Chances, least: number): number {
  const fewer = chances.slice(0, Math.max(0, Math.ceil(least))).reduce((sum, chance) => sum + chance, 0);
  return Math.min(1, Math.max(0, 1 - fewer));
}

/** The smallest count that is reached or stayed below with this chance, so that 0.05 and 0.95 hold nine in ten between them. */
export function quantile(chances: Chances, chance: number): number {
  let sum = 0;
  const found = chances.findIndex((one) => (sum += one) >= chance - TIE);
  return found === -1 ? Math.max(0, chances.length - 1) : found;
}
