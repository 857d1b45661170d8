import type { Day } from '../day.ts';
import { addDays, firstOfMonth, lastOfMonth } from '../day.ts';
import type { Cents } from '../money.ts';
import { centsOf } from '../money.ts';
import { amountsOf } from '../sponsorship/contract-amounts.ts';
import type { BilledLine } from '../sponsorship/happening.ts';
import type { Position } from '../sponsorship/position.ts';
import { isPricedByRead, sumOf } from '../sponsorship/line-values.ts';
import { arrearsLines } from './arrears.ts';
import type { BillingPlan } from './billing-plan.ts';
import { gameLines, whyNoGame } from './game-lines.ts';
import type { GameToBill } from './game-lines.ts';
import { installmentLines } from './installment-lines.ts';
import { liveLines, restLine } from './live-lines.ts';
import { withTaxable } from './line-tax.ts';
import { withoutLater } from './without-later.ts';

/** What is due on a contract: lines for an invoice, and why nothing is when there are none. */
export interface DueToBill {
  lines: BilledLine[];
  netCents: Cents;
  /** a plain sentence */
  why: string;
}

/** What a plan needs to know besides the contract's own state. */
export interface DueFacts {
  /** `perGame`: the games that the contract covers, cancelled ones left out */
  games?: readonly GameToBill[];
  /** monthly arrears: the day of each read, delivery and played game, as `daysOf` answers them */
  days?: ReadonlyMap<string, Day>;
}

/**
 * What a billing plan says is due through a day. What was billed keeps its amount; the open installments or games share
 * what is still to bill. A contract that has ended is billed whole, whatever its plan.
 *
 * @param throughDay the day up to which installments, deposits and games fall due; reads are due once they are counted,
 * with `monthly` once the month they were counted in is over on that day
 */
export function dueToBill(plan: BillingPlan, position: Position, throughDay: Day, facts: DueFacts = {}): DueToBill {
  const asOf = isMonthly(plan, position) ? withoutLater(position, monthsOverOn(throughDay), facts.days ?? new Map()) : position;
  const lines = linesDue(plan, asOf, throughDay, facts);
  const netCents = centsOf(sumOf(lines.map((line) => line.amountCents)));
  if (netCents <= 0) return { lines: [], netCents: centsOf(0), why: whyNothing(plan, asOf, throughDay, facts) };
  const through = isMonthly(plan, position) ? monthsOverOn(throughDay) : throughDay;
  return { lines: withTaxable(position, lines), netCents, why: `Due through ${through}.` };
}

/** The last day of the latest month that is over on a day; on its own last day a month is over. */
export function monthsOverOn(day: Day): Day {
  return lastOfMonth(day) === day ? day : addDays(firstOfMonth(day), -1);
}

const isMonthly = (plan: BillingPlan, position: Position) =>
  plan.kind === 'perReadInArrears' && plan.monthly === true && !position.ended && !position.minimumClaimed && !position.closed;

function linesDue(plan: BillingPlan, position: Position, throughDay: Day, { games = [] }: DueFacts): BilledLine[] {
  const { toBillCents } = amountsOf(position);
  if (position.ended || position.minimumClaimed) {
    return plan.kind === 'perReadInArrears' || plan.kind === 'depositAndArrears' ? arrearsLines(position) : restLine(toBillCents, 'Balance of the agreement');
  }
  switch (plan.kind) {
    case 'inFull':
      return plan.on <= throughDay ? restLine(toBillCents, 'Sponsorship as agreed') : [];
    case 'installments':
      return installmentLines(plan, position, throughDay);
    case 'perGame':
      return gameLines(position, games, throughDay);
    case 'perReadInArrears':
      return arrearsLines(position);
    case 'depositAndArrears':
      return depositIsBilled(position) ? arrearsLines(position) : depositLine(plan, position, throughDay);
  }
}

/** What was billed before we started stands for the deposit. */
function depositIsBilled(position: Position): boolean {
  return liveLines(position).some((line) => line.isDeposit) || position.documents.some((document) => document.kind === 'opening');
}

function depositLine(plan: BillingPlan & { kind: 'depositAndArrears' }, position: Position, throughDay: Day): BilledLine[] {
  if (plan.depositOn > throughDay || plan.depositCents <= 0) return plan.depositCents > 0 ? [] : arrearsLines(position);
  const amountCents = depositOf(plan.depositCents, position);
  return amountCents > 0 ? [{ text: 'Deposit', amountCents, isDeposit: true }] : [];
}

/**
 * A price that was lowered since lowers the deposit with it. One that runs ahead of reads priced each stands, and so does
 * one beyond the signed price: that is a mistake of the plan, and the rule for invoices says so.
 */
function depositOf(depositCents: Cents, position: Position): Cents {
  if (position.lines.some((line) => isPricedByRead(line.terms)) || depositCents > position.terms.priceCents) return depositCents;
  return centsOf(Math.min(depositCents, amountsOf(position).toBillCents));
}

function whyNothing(plan: BillingPlan, position: Position, throughDay: Day, { games = [] }: DueFacts): string {
  const { toBillCents, contractBalanceCents } = amountsOf(position);
  if (toBillCents < 0) return 'More is billed than was earned; it is netted with the next reads.';
  if (toBillCents === 0 && (plan.kind !== 'perReadInArrears' || !plan.monthly)) return 'Everything agreed is billed.';
  if (plan.kind === 'perReadInArrears' && plan.monthly && contractBalanceCents <= 0) return `No read was counted through ${monthsOverOn(throughDay)} that is not billed.`;
  if (plan.kind === 'perReadInArrears' || plan.kind === 'depositAndArrears') {
    return contractBalanceCents <= 0 ? 'The reads given so far are covered by what is billed.' : `Nothing is due through ${throughDay}.`;
  }
  if (plan.kind === 'perGame') return whyNoGame(games, throughDay);
  return `The next part falls due after ${throughDay}.`;
}
