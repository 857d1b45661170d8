import type { Day } from '../day.ts';
import { firstOfMonth } from '../day.ts';
import { monthsFrom } from '../ledger/month.ts';
import { centsOf } from '../money.ts';
import { splitIncome } from '../billing/income-split.ts';

/** What a director asks of a season's money, in the order in which it happens; what is paid in goods stands apart. */
export const INCOME_COLUMNS = ['signed', 'changed', 'billed', 'earned', 'collected', 'inKindAgreed', 'goodsReceived', 'inKindEarned'] as const;
export type IncomeColumn = (typeof INCOME_COLUMNS)[number];

/** Cents by column; what was taken back or went out is below zero. */
export type IncomeFigures = Record<IncomeColumn, number>;

/** An amount of one column in one month, and whose teams' it is; without teams it belongs to none. */
export interface IncomeAmount {
  column: IncomeColumn;
  /** the first day of the month */
  month: Day;
  cents: number;
  teamIds: readonly string[];
}

/** A line of a contract, as far as it says whose games it covers. */
export interface LineReach {
  /** empty: every team of ours */
  teamIds: readonly string[];
  /** empty: every level */
  levels: readonly string[];
}

export interface SeasonTeam {
  id: string;
  level: string;
}

export const noIncome = (): IncomeFigures => Object.fromEntries(INCOME_COLUMNS.map((column) => [column, 0])) as IncomeFigures;

/**
 * The teams to which a contract's price belongs: those that its lines name, else those of its season whose games its
 * lines cover, each once and in the order of the lines. A contract of benefits alone belongs to no team.
 *
 * @param ours our teams of the contract's season
 * @source common practice, no source: the business office decides
 */
export function teamsOfContract(lines: readonly LineReach[], ours: readonly SeasonTeam[]): string[] {
  const named = lines.flatMap((line) => line.teamIds);
  const covered = () => ours.filter((team) => lines.some((line) => line.levels.length === 0 || line.levels.includes(team.level))).map((team) => team.id);
  return [...new Set(named.length > 0 ? named : covered())];
}

/** The sum of amounts in each column; it is the same whichever way they are split. */
export function incomeTotal(amounts: readonly Pick<IncomeAmount, 'column' | 'cents'>[]): IncomeFigures {
  const total = noIncome();
  for (const { column, cents } of amounts) total[column] += cents;
  return total;
}

/** Sums by the month. @returns every month from the first to the last, those without an amount too */
export function incomeByMonth(amounts: readonly IncomeAmount[], first: Day, last: Day): { month: Day; figures: IncomeFigures }[] {
  const sums = new Map(monthsFrom(firstOfMonth(first), firstOfMonth(last)).map((month) => [month, noIncome()]));
  for (const { column, month, cents } of amounts) {
    const figures = sums.get(month) ?? noIncome();
    figures[column] += cents;
    sums.set(month, figures);
  }
  return [...sums].toSorted(([one], [other]) => (one < other ? -1 : 1)).map(([month, figures]) => ({ month, figures }));
}

/** Sums by the team, each amount split evenly so that the parts add up to it; null is what belongs to no team. */
export function incomeByTeam(amounts: readonly IncomeAmount[]): Map<string | null, IncomeFigures> {
  const sums = new Map<string | null, IncomeFigures>();
  for (const { column, cents, teamIds } of amounts) {
    for (const share of splitIncome(centsOf(cents), teamIds)) {
      const figures = sums.get(share.teamId) ?? noIncome();
      figures[column] += share.cents;
      sums.set(share.teamId, figures);
    }
  }
  return sums;
}

/** Figures added up. */
export function addedIncome(several: readonly IncomeFigures[]): IncomeFigures {
  const total = noIncome();
  for (const figures of several) for (const column of INCOME_COLUMNS) total[column] += figures[column];
  return total;
}

export const isNoIncome = (figures: IncomeFigures): boolean => INCOME_COLUMNS.every((column) => figures[column] === 0);
