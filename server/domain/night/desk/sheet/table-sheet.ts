import type { FoulAward } from '../../../season/fouls.ts';
import type { SportRules } from '../../../season/sport-rules.ts';
import type { DeskGame } from '../bundle.ts';
import { goesIntoExtraPeriods } from './period.ts';

/** What the sheet knows of one shirt number. */
export interface PlayerCount {
  readonly points: number;
  /** personal and technical together */
  readonly fouls: number;
  readonly technicals: number;
}

/** One team on the sheet. Lists by period or stretch begin with the first at place 0. */
export interface TeamCount {
  readonly teamId: string;
  readonly points: readonly number[];
  /** runs, goals, points, and the team points of bouts */
  readonly total: number;
  /** how often each kind of score was logged, by `detail.what` */
  readonly counts: Readonly<Record<string, number>>;
  readonly players: Readonly<Record<string, PlayerCount>>;
  /** by the stretch in which the rule counts them */
  readonly teamFouls: readonly number[];
  readonly coachDirect: number;
  readonly coachIndirect: number;
  /** time-outs taken, by the name of their kind, by period */
  readonly timeOuts: Readonly<Record<string, readonly number[]>>;
  readonly substitutions: number;
  /** the number that batted or served last; null before the first */
  readonly atBat: string | null;
}

/** The foul called last, with what it earned. */
export interface FoulCall {
  readonly entryId: string;
  readonly teamId: string;
  readonly playerNumber: string | null;
  /** the player's count with this foul; zero where no player was named */
  readonly playerFouls: number;
  /** the team's count with this foul in its stretch; zero in a sport that counts none */
  readonly teamFouls: number;
  readonly award: FoulAward;
  readonly disqualifies: boolean;
}

export interface BoutResult {
  readonly entryId: string;
  readonly weightClass: string;
  readonly how: string;
  /** null where nobody won */
  readonly winnerTeamId: string | null;
  readonly playerNumber: string | null;
  readonly points: number;
}

export interface BookCheck {
  readonly agrees: boolean;
  readonly words: string;
}

/** All that the log of one game adds up to. */
export interface TableSheet {
  readonly gameId: string;
  readonly rules: SportRules;
  readonly visitors: TeamCount;
  readonly home: TeamCount;
  /** periods whose end is logged, by place */
  readonly ended: readonly boolean[];
  /** the latest period an entry was logged in */
  readonly latestPeriod: number;
  readonly book: Readonly<Record<number, BookCheck>>;
  readonly bouts: Readonly<Record<string, BoutResult>>;
  readonly lastFoul: FoulCall | null;
  /** the team that serves or bats */
  readonly attackingTeamId: string | null;
  /** the late period in which the latest time-out was taken with no time on the clock; null once the clock has run */
  readonly timeOutAtZeroIn: number | null;
  /** a time-out followed another after time had expired */
  readonly timeOutsWereSuccessive: boolean;
}

const NO_TEAM: Omit<TeamCount, 'teamId'> = {
  points: [], total: 0, counts: {}, players: {}, teamFouls: [], coachDirect: 0, coachIndirect: 0, timeOuts: {}, substitutions: 0, atBat: null,
};

/** The sheet before the first entry. @param rules of the game's sport */
export function emptySheet(game: Pick<DeskGame, 'gameId' | 'visitors' | 'home'>, rules: SportRules): TableSheet {
  return {
    gameId: game.gameId, rules, visitors: { ...NO_TEAM, teamId: game.visitors.teamId }, home: { ...NO_TEAM, teamId: game.home.teamId },
    ended: [], latestPeriod: 1, book: {}, bouts: {}, lastFoul: null, attackingTeamId: null, timeOutAtZeroIn: null, timeOutsWereSuccessive: false,
  };
}

/** Sets a team has won: those ended with that team ahead. */
export function setsWon(sheet: TableSheet, side: 'visitors' | 'home'): number {
  const [own, other] = side === 'home' ? [sheet.home, sheet.visitors] : [sheet.visitors, sheet.home];
  return sheet.ended.filter((isEnded, place) => isEnded && (own.points[place] ?? 0) > (other.points[place] ?? 0)).length;
}

/** The game is decided: the sets are won, every bout is wrestled, or its last period ended with one team ahead. */
export function isOver(sheet: TableSheet): boolean {
  const { rules } = sheet;
  if (rules.bouts.length > 0) return rules.weightClasses.every((weight) => sheet.bouts[weight] !== undefined);
  if (rules.sets !== null) return Math.max(setsWon(sheet, 'visitors'), setsWon(sheet, 'home')) >= rules.sets.setsToWin;
  // Whoever leads in an overtime has not won it yet.
  const hasGoneOn = sheet.latestPeriod > sheet.ended.length;
  return sheet.ended.length >= rules.periods.count && sheet.ended.at(-1) === true && !hasGoneOn && sheet.visitors.total !== sheet.home.total;
}

/** The period that is played now, 1 and up: the one after the last that ended, or a later one that has entries. */
export function currentPeriod(sheet: TableSheet): number {
  const { rules } = sheet;
  const next = isOver(sheet) ? Math.max(1, sheet.ended.length) : sheet.ended.length + 1;
  const period = Math.max(next, sheet.latestPeriod);
  return goesIntoExtraPeriods(rules) ? period : Math.min(period, rules.periods.count);
}

/** A set is played out by the rule: enough points, far enough ahead. Its end is still for a person to log. */
export function isSetPlayedOut(sheet: TableSheet, period: number): boolean {
  const { sets, periods } = sheet.rules;
  if (sets === null) return false;
  const [one, other] = [sheet.visitors.points[period - 1] ?? 0, sheet.home.points[period - 1] ?? 0];
  const points = period === periods.count ? sets.decidingPoints : sets.points;
  return Math.max(one, other) >= points && Math.abs(one - other) >= sets.ahead;
}

/** With so many fouls, technical ones or not, a player may not go on. @source IAABO Board 36 scorer card; NFHS Case 10.6.3 */
export function isDisqualified(rules: SportRules, player: PlayerCount | undefined): boolean {
  if (player === undefined || rules.teamFouls === null) return false;
  return player.fouls >= rules.teamFouls.playerLimit || player.technicals >= rules.teamFouls.technicalLimits.player;
}

/** Two direct technical fouls, or three direct and indirect together. @source IAABO Board 36 scorer card */
export function isCoachDisqualified(rules: SportRules, team: TeamCount): boolean {
  if (rules.teamFouls === null) return false;
  const { coachDirect, coachTogether } = rules.teamFouls.technicalLimits;
  return team.coachDirect >= coachDirect || team.coachDirect + team.coachIndirect >= coachTogether;
}
