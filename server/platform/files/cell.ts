/** A cell of a file for a spreadsheet: words, a count, an amount of money in whole cents, a calendar day, or nothing. */
export type Cell = string | number | null | { readonly cents: number } | { readonly day: string };

/** An amount as plain digits with two decimals, `-1234.50`, written from whole cents without passing through a fraction. */
export function decimalText(cents: number): string {
  const digits = String(Math.abs(cents)).padStart(3, '0');
  return `${cents < 0 ? '-' : ''}${digits.slice(0, -2)}.${digits.slice(-2)}`;
}
