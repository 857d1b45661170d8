import type { Cents } from '../money.ts';
import { centsOf } from '../money.ts';

/** `350`, `1,234`, `1234.5`, `.50`: commas only where thousands end, at most two places. */
const AMOUNT = /^\$?\s*(\d{1,3}(?:,\d{3})+|\d+)?(?:\.(\d{1,2}))?$/;

/**
 * The amount that somebody looks for, as typed: `$1,234.50`, `1234.5`, `350`. What is only half an amount (`12.`, `1,23`) or
 * has more than two places is not guessed at.
 *
 * @returns null when it is no amount above zero
 */
export function amountSought(typed: string): Cents | null {
  const found = AMOUNT.exec(typed.trim());
  const [, whole, places] = found ?? [];
  if (whole === undefined && places === undefined) return null;
  const cents = Number((whole ?? '0').replaceAll(',', '')) * 100 + Number((places ?? '').padEnd(2, '0'));
  return Number.isSafeInteger(cents) && cents > 0 ? centsOf(cents) : null;
}
