import type { TeamFoulRule } from './sport-profile.ts';

export type FoulAward = 'none' | 'oneAndOne' | 'two';

/**
 * What the other team shoots for a common foul that is not by a player in control of the ball.
 * Reference for the table only: team-foul counts are not read aloud (NFHS 2014-15 Basketball Point of
 * Emphasis, announcer responsibilities).
 *
 * @param teamFoulNumber the number of this foul in the half or quarter the rule counts by, 1 for the first
 * @throws RangeError when the number is not a whole number from 1
 * @source NFHS Basketball Rule 4-8-1, before 2023-24 by half, from 2023-24 by quarter
 */
export function foulAward(rule: TeamFoulRule | null, teamFoulNumber: number): FoulAward {
  if (!Number.isSafeInteger(teamFoulNumber) || teamFoulNumber < 1) {
    throw new RangeError(`${teamFoulNumber} is not the number of a foul`);
  }
  return rule?.steps.findLast((step) => teamFoulNumber >= step.fromFoul)?.award ?? 'none';
}

/**
 * Which stretch of the game a period's team fouls count in: the quarter, or the half. Extra periods are
 * an extension of the fourth quarter, so they go on counting in its stretch.
 *
 * @param period 1 to 4 for quarters (1 and 2 where a state plays halves), then extra periods
 * @param periods how many periods the rules have
 * @source NFHS Basketball Rule 5-7-3; that fouls carry over is from memory
 */
export function foulStretchOf(rule: TeamFoulRule, period: number, periods = 4): number {
  const inPlay = Math.min(period, periods);
  return rule.countedPer === 'quarter' || periods === 2 ? inPlay : Math.ceil((inPlay * 2) / periods);
}

/**
 * Numbers a team's fouls as the rule counts them and says what each earned.
 *
 * @param periods the period of each foul, in the order they were called
 * @param count how many periods the rules have
 */
export function foulSheet(rule: TeamFoulRule, periods: readonly number[], count = 4): { teamFoulNumber: number; award: FoulAward }[] {
  const counts = new Map<number, number>();
  return periods.map((period) => {
    const stretch = foulStretchOf(rule, period, count);
    const teamFoulNumber = (counts.get(stretch) ?? 0) + 1;
    counts.set(stretch, teamFoulNumber);
    return { teamFoulNumber, award: foulAward(rule, teamFoulNumber) };
  });
}
