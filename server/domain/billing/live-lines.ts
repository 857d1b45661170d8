import { centsOf } from '../money.ts';
import type { BilledLine } from '../sponsorship/happening.ts';
import type { Position } from '../sponsorship/position.ts';

/** The lines of a contract's invoices that are not void. */
export function liveLines(position: Position): BilledLine[] {
  return position.documents.filter((document) => !document.isVoid).flatMap((document) => document.lines);
}

/** Reads that stand on a live line, those taken back since among them: counted again, they are not billed again. */
export function billedReads(position: Position): Set<string> {
  return new Set(liveLines(position).flatMap((line) => line.readIds ?? []));
}

/** One line over all that is left; none where nothing is. */
export function restLine(amountCents: number, text: string): BilledLine[] {
  return amountCents > 0 ? [{ text, amountCents: centsOf(amountCents) }] : [];
}
