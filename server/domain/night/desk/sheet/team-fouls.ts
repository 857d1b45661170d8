import { foulAward, foulStretchOf } from '../../../season/fouls.ts';
import type { FoulAward } from '../../../season/fouls.ts';
import { currentPeriod } from './table-sheet.ts';
import type { TableSheet, TeamCount } from './table-sheet.ts';

/** Where a team stands with its fouls in the stretch that is played. For the table: team fouls are not read aloud. */
export interface TeamFoulState {
  readonly count: number;
  /** "of the quarter", "of the half" */
  readonly countedPer: 'quarter' | 'half';
  /** what the next common foul earns the other team */
  readonly nextEarns: FoulAward;
  /** the number of the foul from which on something is shot */
  readonly bonusFrom: number;
}

/** @returns null in a sport that counts no team fouls @source NFHS Basketball Rule 4-8-1; overtime by 5-7-3 */
export function teamFoulsOf(sheet: TableSheet, team: TeamCount, period: number = currentPeriod(sheet)): TeamFoulState | null {
  const rule = sheet.rules.teamFouls;
  if (rule === null) return null;
  const count = team.teamFouls[foulStretchOf(rule, period, sheet.rules.periods.count) - 1] ?? 0;
  return { count, countedPer: rule.countedPer, nextEarns: foulAward(rule, count + 1), bonusFrom: rule.steps[0]?.fromFoul ?? Infinity };
}
