import type { Cents } from '../money.ts';
import { centsOf } from '../money.ts';
import { amountsOf, priceEachOf } from '../sponsorship/contract-amounts.ts';
import type { BilledLine } from '../sponsorship/happening.ts';
import { isPricedByRead, sumOf } from '../sponsorship/line-values.ts';
import type { LinePosition, Position } from '../sponsorship/position.ts';
import { settledOrdinals } from '../sponsorship/slot-reads.ts';
import { billedReads, liveLines } from './live-lines.ts';

/**
 * Reads given and not billed, line by line, less what was billed ahead of them (a deposit), the cap, and the least
 * amount at the end. The sum is never more than what is earned less what is billed.
 */
export function arrearsLines(position: Position): BilledLine[] {
  const { contractBalanceCents, toBillCents, topUpCents } = amountsOf(position);
  const dueCents = Math.min(contractBalanceCents, toBillCents);
  if (dueCents <= 0) return [];
  const lines = position.lines.flatMap((line) => newlyGiven(position, line));
  if (topUpCents > 0 && !liveLines(position).some((line) => line.isMinimum)) {
    lines.push({ text: 'Up to the least amount agreed', amountCents: centsOf(topUpCents), isMinimum: true });
  }
  const differenceCents = dueCents - sumOf(lines.map((line) => line.amountCents));
  return differenceCents === 0 ? lines : [...lines, balancingLine(position, differenceCents)];
}

function balancingLine(position: Position, differenceCents: number): BilledLine {
  const amountCents = centsOf(differenceCents);
  if (differenceCents > 0) return { text: position.opening ? 'Earned before the start and not billed' : 'Other amounts agreed', amountCents };
  const hasDeposit = liveLines(position).some((line) => line.isDeposit && line.amountCents > 0);
  const { earnedPerReadCents } = amountsOf(position);
  const isCapped = earnedPerReadCents > 0 && earnedPerReadCents === position.terms.billAtMostCents;
  return { text: isCapped ? 'Beyond the most agreed' : hasDeposit ? 'Less deposit' : 'Less billed before', amountCents };
}

/** Ordinals that were earned and stand on no live line, wherever they lie: a voided invoice leaves a gap. */
function newlyGiven(position: Position, line: LinePosition): BilledLine[] {
  const { lineId, name } = line.terms;
  const missing = unbilledOrdinals(position, line);
  const readIds = unbilledReads(position, lineId).slice(0, missing.length);
  const runs = runsOf(line, missing);
  return runs.map(({ from, to, unitCents }, place) => {
    const own = readIds.splice(0, place === runs.length - 1 ? readIds.length : to - from);
    return {
      text: name,
      amountCents: centsOf(unitCents * (to - from)),
      quantity: to - from,
      unitCents: centsOf(unitCents),
      lineId,
      fromOrdinal: from + 1,
      toOrdinal: to,
      ...(own.length > 0 || place === 0 ? { readIds: own } : {}),
    };
  });
}

/** Counted from 0, in their order. */
function unbilledOrdinals(position: Position, line: LinePosition): number[] {
  const billed = liveLines(position).filter((one) => one.lineId === line.terms.lineId && one.toOrdinal !== undefined);
  const ordinals: number[] = [];
  for (let place = openingOrdinal(position, line); place < settledOrdinals(line); place += 1) {
    if (!billed.some(({ fromOrdinal = 1, toOrdinal = 0 }) => fromOrdinal <= place + 1 && place + 1 <= toOrdinal)) ordinals.push(place);
  }
  return ordinals;
}

/** Reads given before we started were billed before we started, as far as that went. */
function openingOrdinal(position: Position, line: LinePosition): number {
  if (!position.opening) return 0;
  const counted = Object.values(position.reads).filter((read) => read.lineId === line.terms.lineId && read.makegoodId === undefined);
  return Math.max(0, sumOf(line.slots.map((slot) => slot.counted)) - sumOf(counted.map((read) => read.times)));
}

/** Ordinals of one value side by side become one line, `8 × 50.00`. */
function runsOf(line: LinePosition, places: readonly number[]): { from: number; to: number; unitCents: Cents }[] {
  const runs: { from: number; to: number; unitCents: Cents }[] = [];
  for (const place of places) {
    const unitCents = centsOf(isPricedByRead(line.terms) ? priceEachOf(line.terms) : (line.values[place] ?? 0));
    const last = runs.at(-1);
    if (last && last.to === place && last.unitCents === unitCents) last.to = place + 1;
    else runs.push({ from: place, to: place + 1, unitCents });
  }
  return runs.filter((run) => isPricedByRead(line.terms) || run.unitCents > 0);
}

function unbilledReads(position: Position, lineId: string): string[] {
  const billed = billedReads(position);
  return Object.entries(position.reads)
    .filter(([readId, read]) => read.lineId === lineId && !billed.has(readId))
    .map(([readId]) => readId);
}
