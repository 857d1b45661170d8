import type { TimeOutRule } from '../../../season/sport-rules.ts';
import { halfOf } from './period.ts';
import { currentPeriod } from './table-sheet.ts';
import type { TableSheet, TeamCount } from './table-sheet.ts';

/** What a team has left of one kind of time-out. For the table: the number left is not read aloud. */
export interface TimeOutsLeft {
  /** as the rules and `detail.timeOut` name it: `full`, `thirty` */
  readonly name: string;
  readonly seconds: number;
  readonly left: number;
  readonly allowed: number;
  /** taken beyond what the rules give; the log keeps them, the official decides */
  readonly over: number;
}

const WORDS: Readonly<Record<string, string>> = { full: 'Full', thirty: 'Thirty seconds', conference: 'Conference' };

/** A kind of time-out in words, for a button. */
export const timeOutWords = (name: string): string => WORDS[name] ?? name;

const sum = (counts: readonly number[]): number => counts.reduce((all, count) => all + count, 0);

/** The rules of one kind that hold in a period, and how many of its time-outs were taken within what they count over. */
function stretchOf(sheet: TableSheet, rule: TimeOutRule, period: number, taken: readonly number[]): { allowed: number; used: number } {
  const { rules } = sheet;
  const extra = rules.timeOuts.find((other) => other.per === 'extraPeriod' && other.name === rule.name);
  const extraPeriods = Math.max(0, period - rules.periods.count);
  if (rule.per === 'game') return { allowed: rule.perTeam + extraPeriods * (extra?.perTeam ?? 0), used: sum(taken) };
  // Where they count by half or set, nothing is carried into an extra period: from memory.
  if (extraPeriods > 0) return { allowed: extra?.perTeam ?? 0, used: taken[period - 1] ?? 0 };
  if (rule.per === 'set') return { allowed: rule.perTeam, used: taken[period - 1] ?? 0 };
  return { allowed: rule.perTeam, used: sum(taken.filter((_, place) => place < rules.periods.count && halfOf(rules, place + 1) === halfOf(rules, period))) };
}

/**
 * What a team has left in a period, by kind. In basketball each extra period adds one full time-out to what is left; in
 * football each half and each extra period has its own; in volleyball each set.
 *
 * @param period 1 and up, the current one where nothing else is said
 * @source NFHS Basketball Rule 5-12 and the IAABO Board 36 cards; other sports as their profiles say
 */
export function timeOutsLeft(sheet: TableSheet, team: TeamCount, period: number = currentPeriod(sheet)): TimeOutsLeft[] {
  return sheet.rules.timeOuts.filter((rule) => rule.per !== 'extraPeriod').map((rule) => {
    const { allowed, used } = stretchOf(sheet, rule, period, team.timeOuts[rule.name] ?? []);
    return { name: rule.name, seconds: rule.seconds, allowed, left: Math.max(0, allowed - used), over: Math.max(0, used - allowed) };
  });
}
