import type { Happening } from './happening.ts';
import { isPricedByRead } from './line-values.ts';
import type { Position } from './position.ts';

const LOWERS_THE_PRICE: ReadonlySet<Happening['kind']> = new Set(['amended', 'swapped', 'priceLowered', 'readsCredited', 'gameCancelled', 'ended', 'allowanceGiven', 'carriedOut']);

/**
 * A happening as it is booked from now on: where reads are priced each, allowances fall with the price. What was booked before
 * that rule does not say so, and folds to the memos that were written then.
 *
 * @param position `null` before signing
 */
export function toldNow<Told extends Happening>(position: Position | null, happening: Told): Told {
  if (!LOWERS_THE_PRICE.has(happening.kind) || !position || position.allowancesCents <= 0) return happening;
  return position.lines.some((line) => isPricedByRead(line.terms)) ? { ...happening, allowancesFall: true } : happening;
}
