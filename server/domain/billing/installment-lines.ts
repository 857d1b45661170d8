import type { Day } from '../day.ts';
import type { Cents } from '../money.ts';
import { centsOf, splitByLargestRemainder } from '../money.ts';
import { amountsOf } from '../sponsorship/contract-amounts.ts';
import type { BilledLine } from '../sponsorship/happening.ts';
import type { Position } from '../sponsorship/position.ts';
import type { Installment } from './billing-plan.ts';
import { hasAmounts } from './billing-plan.ts';
import { liveLines, restLine } from './live-lines.ts';

type Open = Installment & { place: number };

/**
 * The installments that fall due through a day. Those that were billed keep their amounts; the open ones share what is
 * still to bill, by their shares with the largest remainder, or take their fixed amounts, the last one the rest.
 */
export function installmentLines(plan: { installments: readonly Installment[] }, position: Position, throughDay: Day): BilledLine[] {
  const { toBillCents } = amountsOf(position);
  if (toBillCents <= 0) return [];
  const billed = new Set(liveLines(position).flatMap((line) => (line.installment === undefined ? [] : [line.installment])));
  const open = plan.installments.map((installment, place) => ({ ...installment, place })).filter(({ place }) => !billed.has(place));
  // What an amendment adds after the last installment is due with it.
  if (open.length === 0) return restLine(toBillCents, 'Added to the agreement since the last installment');
  const amounts = hasAmounts(open) ? fixedAmounts(open, centsOf(toBillCents)) : amountsByShare(open, centsOf(toBillCents));
  return open.flatMap(({ on, place, amountCents: fixed }, index) => {
    const amountCents = amounts[index] ?? centsOf(0);
    if (on > throughDay || amountCents <= 0) return [];
    const text = `Installment ${place + 1} of ${plan.installments.length}`;
    return [{ text: fixed !== undefined && amountCents > fixed ? `${text}, with the rest of the price` : text, amountCents, installment: place }];
  });
}

function amountsByShare(open: readonly Open[], toBillCents: Cents): Cents[] {
  return splitByLargestRemainder(toBillCents, open.some(({ share }) => share > 0) ? open.map(({ share }) => share) : open.map(() => 1));
}

/** In the order of their days; what a lowered price no longer covers is taken from the last ones. */
function fixedAmounts(open: readonly Open[], toBillCents: Cents): Cents[] {
  const byDay = open.map((installment, index) => ({ ...installment, index })).sort((a, b) => (a.on === b.on ? a.index - b.index : a.on < b.on ? -1 : 1));
  const amounts = open.map(() => centsOf(0));
  let left: number = toBillCents;
  for (const { index, amountCents = 0 } of byDay) {
    const isLast = index === byDay.at(-1)?.index;
    amounts[index] = centsOf(isLast ? left : Math.min(left, amountCents));
    left -= amounts[index];
  }
  return amounts;
}
