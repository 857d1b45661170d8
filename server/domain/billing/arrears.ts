import type { Cents } from '../money.ts';
import { centsOf } from '../money.ts';
import { amountsOf, priceEachOf } from '../sponsorship/contract-amounts.ts';
import type { BilledLine } from '../sponsorship/happening.ts';
import { isPricedByRead, sumOf } from '../sponsorship/line-values.ts';
import type { LinePosition, Position } from '../sponsorship/position.ts';
import { settledOrdinals } from '../sponsorship/slot-reads.ts';
import { liveLines } from './live-lines.ts';

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

function newlyGiven(position: Position, line: LinePosition): BilledLine[] {
  const { lineId, name } = line.terms;
  const billedThrough = Math.max(0, ...liveLines(position).flatMap((one) => (one.lineId === lineId ? [one.toOrdinal ?? 0] : [])), openingOrdinal(position, line));
  const settled = settledOrdinals(line);
  if (settled <= billedThrough) return [];
  const readIds = unbilledReads(position, lineId).slice(0, settled - billedThrough);
  return runsOf(line, billedThrough, settled).map(({ from, to, unitCents }, place) => ({
    text: name,
    amountCents: centsOf(unitCents * (to - from)),
    quantity: to - from,
    unitCents: centsOf(unitCents),
    lineId,
    fromOrdinal: from + 1,
    toOrdinal: to,
    ...(place === 0 ? { readIds } : {}),
  }));
}

/** Reads given before we started were billed before we started, as far as that went. */
function openingOrdinal(position: Position, line: LinePosition): number {
  if (!position.opening) return 0;
  const counted = Object.values(position.reads).filter((read) => read.lineId === line.terms.lineId && read.makegoodId === undefined);
  return Math.max(0, sumOf(line.slots.map((slot) => slot.counted)) - sumOf(counted.map((read) => read.times)));
}

/** Ordinals of one value side by side become one line, `8 × 50.00`. */
function runsOf(line: LinePosition, from: number, to: number): { from: number; to: number; unitCents: Cents }[] {
  if (isPricedByRead(line.terms)) return [{ from, to, unitCents: centsOf(priceEachOf(line.terms)) }];
  const runs: { from: number; to: number; unitCents: Cents }[] = [];
  for (let place = from; place < to; place += 1) {
    const unitCents = centsOf(line.values[place] ?? 0);
    const last = runs.at(-1);
    if (last && last.unitCents === unitCents) last.to = place + 1;
    else runs.push({ from: place, to: place + 1, unitCents });
  }
  return runs.filter((run) => run.unitCents > 0);
}

function unbilledReads(position: Position, lineId: string): string[] {
  return Object.entries(position.reads)
    .filter(([, read]) => read.lineId === lineId && read.invoiceId === undefined)
    .map(([readId]) => readId);
}
