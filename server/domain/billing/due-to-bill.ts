import type { Day } from '../day.ts';
import type { Cents } from '../money.ts';
import { centsOf, splitByLargestRemainder } from '../money.ts';
import { amountsOf } from '../sponsorship/contract-amounts.ts';
import type { BilledLine } from '../sponsorship/happening.ts';
import type { Position } from '../sponsorship/position.ts';
import { sumOf } from '../sponsorship/line-values.ts';
import { arrearsLines } from './arrears.ts';
import type { BillingPlan } from './billing-plan.ts';

/** What is due on a contract: lines for an invoice, and why nothing is when there are none. */
export interface DueToBill {
  lines: BilledLine[];
  netCents: Cents;
  /** a plain sentence */
  why: string;
}

/**
 * What a billing plan says is due through a day. An installment that was billed keeps its amount; the open ones share
 * what is still to bill. A contract that has ended is billed whole, whatever its plan.
 *
 * @param throughDay the day up to which installments and deposits fall due; reads are due once they are counted
 */
export function dueToBill(plan: BillingPlan, position: Position, throughDay: Day): DueToBill {
  const lines = linesDue(plan, position, throughDay);
  const netCents = centsOf(sumOf(lines.map((line) => line.amountCents)));
  if (netCents <= 0) return { lines: [], netCents: centsOf(0), why: whyNothing(plan, position, throughDay) };
  return { lines, netCents, why: `Due through ${throughDay}.` };
}

function linesDue(plan: BillingPlan, position: Position, throughDay: Day): BilledLine[] {
  const { toBillCents } = amountsOf(position);
  if (position.ended || position.minimumClaimed) {
    return plan.kind === 'perReadInArrears' || plan.kind === 'depositAndArrears' ? arrearsLines(position) : restLine(toBillCents, 'Balance of the agreement');
  }
  switch (plan.kind) {
    case 'inFull':
      return plan.on <= throughDay ? restLine(toBillCents, 'Sponsorship as agreed') : [];
    case 'installments':
      return installmentLines(plan, position, throughDay);
    case 'perReadInArrears':
      return arrearsLines(position);
    case 'depositAndArrears':
      return depositIsBilled(position) ? arrearsLines(position) : depositLine(plan, position, throughDay);
  }
}

function restLine(amountCents: number, text: string): BilledLine[] {
  return amountCents > 0 ? [{ text, amountCents: centsOf(amountCents) }] : [];
}

function installmentLines(plan: BillingPlan & { kind: 'installments' }, position: Position, throughDay: Day): BilledLine[] {
  const billed = new Set(liveLines(position).flatMap((line) => (line.installment === undefined ? [] : [line.installment])));
  const { toBillCents } = amountsOf(position);
  const open = plan.installments.map((installment, place) => ({ ...installment, place })).filter(({ place }) => !billed.has(place));
  if (toBillCents <= 0) return [];
  // What an amendment adds after the last installment is due with it.
  if (open.length === 0) return restLine(toBillCents, 'Added to the agreement since the last installment');
  const amounts = splitByLargestRemainder(centsOf(toBillCents), open.some(({ share }) => share > 0) ? open.map(({ share }) => share) : open.map(() => 1));
  return open.flatMap(({ on, place }, index) => {
    const amountCents = amounts[index] ?? centsOf(0);
    if (on > throughDay || amountCents <= 0) return [];
    return [{ text: `Installment ${place + 1} of ${plan.installments.length}`, amountCents, installment: place }];
  });
}

function liveLines(position: Position): BilledLine[] {
  return position.documents.filter((document) => !document.isVoid).flatMap((document) => document.lines);
}

/** What was billed before we started stands for the deposit. */
function depositIsBilled(position: Position): boolean {
  return liveLines(position).some((line) => line.isDeposit) || position.documents.some((document) => document.kind !== 'invoice');
}

function depositLine(plan: BillingPlan & { kind: 'depositAndArrears' }, position: Position, throughDay: Day): BilledLine[] {
  if (plan.depositOn > throughDay || plan.depositCents <= 0) return plan.depositCents > 0 ? [] : arrearsLines(position);
  return [{ text: 'Deposit', amountCents: plan.depositCents, isDeposit: true }];
}

function whyNothing(plan: BillingPlan, position: Position, throughDay: Day): string {
  const { toBillCents, contractBalanceCents } = amountsOf(position);
  if (toBillCents < 0) return 'More is billed than was earned; it is netted with the next reads.';
  if (toBillCents === 0) return 'Everything agreed is billed.';
  if (plan.kind === 'perReadInArrears' || plan.kind === 'depositAndArrears') {
    return contractBalanceCents <= 0 ? 'The reads given so far are covered by what is billed.' : `Nothing is due through ${throughDay}.`;
  }
  return `The next part falls due after ${throughDay}.`;
}
