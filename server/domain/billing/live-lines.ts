import { centsOf } from '../money.ts';
import type { BilledLine } from '../sponsorship/happening.ts';
import type { Position } from '../sponsorship/position.ts';

/** The lines of a contract's invoices that are not void. */
export function liveLines(position: Position): BilledLine[] {
  return position.documents.filter((document) => !document.isVoid).flatMap((document) => document.lines);
}

/** One line over all that is left; none where nothing is. */
export function restLine(amountCents: number, text: string): BilledLine[] {
  return amountCents > 0 ? [{ text, amountCents: centsOf(amountCents) }] : [];
}
