import { foulAward, foulStretchOf } from '../../../season/fouls.ts';
import type { FoulAward } from '../../../season/fouls.ts';
import { secondsOfClock } from '../../occurrences.ts';
import { standing } from '../../take-back.ts';
import type { DeskGame } from '../bundle.ts';
import type { DeskEntry } from '../desk-entry.ts';
import { periodNumber } from './period.ts';
import { currentPeriod, emptySheet, isDisqualified } from './table-sheet.ts';
import type { PlayerCount, TableSheet, TeamCount } from './table-sheet.ts';
import type { SportRules } from '../../../season/sport-rules.ts';

/**
 * What a foul is, as `detail.foul` says it: a common one, one by a player in control of the ball, a technical one on a
 * player, one on the bench (indirectly on the head coach), one on the head coach himself.
 */
export const FOUL_FORMS = ['common', 'control', 'technical', 'bench', 'coach'] as const;
export type FoulForm = (typeof FOUL_FORMS)[number];

type Side = 'visitors' | 'home';
const NOBODY: PlayerCount = { points: 0, fouls: 0, technicals: 0 };

const word = (line: DeskEntry, field: string): string => (typeof line.detail?.[field] === 'string' ? line.detail[field] : '');

/** Adds to one place of a list, which grows with noughts as far as it must. */
function plusAt(list: readonly number[], place: number, amount: number): number[] {
  return Array.from({ length: Math.max(list.length, place + 1) }, (_, at) => (list[at] ?? 0) + (at === place ? amount : 0));
}

export function foulFormOf(line: Pick<DeskEntry, 'detail'>): FoulForm {
  return FOUL_FORMS.find((form) => form === line.detail?.['foul']) ?? 'common';
}

/** What a score is worth: what the entry says, else what the rules say of its kind; a basket that says nothing is the first. */
export function pointsOf(rules: SportRules, line: DeskEntry): number {
  const said = line.detail?.['points'];
  if (typeof said === 'number' && Number.isSafeInteger(said) && said >= 0 && said < 100) return said;
  const rule = rules.scores.find((score) => score.what === line.detail?.['what']) ?? (line.kind === 'basket' ? rules.scores[0] : undefined);
  return rule?.points ?? 0;
}

function scored(sheet: TableSheet, team: TeamCount, line: DeskEntry, period: number): TeamCount {
  const points = pointsOf(sheet.rules, line);
  const what = word(line, 'what') || (line.kind === 'basket' ? (sheet.rules.scores[0]?.what ?? '') : '');
  const number = line.playerNumber;
  const player = number === null ? undefined : (team.players[number] ?? NOBODY);
  return {
    ...team, points: plusAt(team.points, period - 1, points), total: team.total + points, counts: { ...team.counts, [what]: (team.counts[what] ?? 0) + 1 },
    players: number === null || !player ? team.players : { ...team.players, [number]: { ...player, points: player.points + points } },
  };
}

/** A technical foul earns two free throws, from memory; one by a player in control of the ball earns none (NFHS 4-8-1, from memory). */
function awardOf(form: FoulForm, rules: SportRules, teamFoulNumber: number): FoulAward {
  if (rules.teamFouls === null || form === 'control') return 'none';
  return form === 'common' ? foulAward(rules.teamFouls, teamFoulNumber) : 'two';
}

function fouled(sheet: TableSheet, side: Side, line: DeskEntry, period: number): TableSheet {
  const { rules } = sheet;
  const team = sheet[side];
  const form = foulFormOf(line);
  const number = form === 'bench' || form === 'coach' ? null : line.playerNumber;
  const before = number === null ? undefined : (team.players[number] ?? NOBODY);
  const player = before && { ...before, fouls: before.fouls + 1, technicals: before.technicals + (form === 'technical' ? 1 : 0) };
  const stretch = rules.teamFouls === null ? 0 : foulStretchOf(rules.teamFouls, period, rules.periods.count);
  const teamFouls = stretch === 0 ? team.teamFouls : plusAt(team.teamFouls, stretch - 1, 1);
  const teamFoulNumber = teamFouls[stretch - 1] ?? 0;
  const next: TeamCount = {
    ...team, teamFouls, coachDirect: team.coachDirect + (form === 'coach' ? 1 : 0), coachIndirect: team.coachIndirect + (form === 'bench' ? 1 : 0),
    players: number === null || !player ? team.players : { ...team.players, [number]: player },
  };
  const lastFoul = {
    entryId: line.id, teamId: team.teamId, playerNumber: number, playerFouls: player?.fouls ?? 0, teamFouls: teamFoulNumber,
    award: awardOf(form, rules, teamFoulNumber), disqualifies: isDisqualified(rules, player) && !isDisqualified(rules, before),
  };
  return { ...sheet, [side]: next, lastFoul };
}

function timeOutTaken(sheet: TableSheet, side: Side, line: DeskEntry, period: number): TableSheet {
  const team = sheet[side];
  const name = word(line, 'timeOut') || (sheet.rules.timeOuts[0]?.name ?? 'full');
  const timeOuts = { ...team.timeOuts, [name]: plusAt(team.timeOuts[name] ?? [], period - 1, 1) };
  const isAtZero = period >= sheet.rules.periods.count && secondsOfClock(line.clock) === 0;
  return {
    ...sheet, [side]: { ...team, timeOuts }, timeOutAtZeroIn: isAtZero ? period : null,
    timeOutsWereSuccessive: isAtZero && sheet.timeOutAtZeroIn === period && sheet.rules.forbidsSuccessiveTimeOuts === true,
  };
}

function boutEnded(sheet: TableSheet, side: Side | null, line: DeskEntry): TableSheet {
  const [weightClass, how] = [word(line, 'weightClass'), word(line, 'how')];
  const points = typeof line.detail?.['points'] === 'number' ? line.detail['points'] : (sheet.rules.bouts.find((bout) => bout.how === how)?.teamPoints ?? 0);
  const before = sheet.bouts[weightClass];
  const cleared = before ? withTotal(sheet, before.winnerTeamId, -before.points) : sheet;
  const bout = { entryId: line.id, weightClass, how, winnerTeamId: side === null ? null : sheet[side].teamId, playerNumber: line.playerNumber, points: side === null ? 0 : points };
  return { ...withTotal(cleared, bout.winnerTeamId, bout.points), bouts: { ...sheet.bouts, [weightClass]: bout } };
}

function withTotal(sheet: TableSheet, teamId: string | null, points: number): TableSheet {
  const side = sideOf(sheet, teamId);
  return side === null ? sheet : { ...sheet, [side]: { ...sheet[side], total: sheet[side].total + points } };
}

export function sideOf(sheet: Pick<TableSheet, 'visitors' | 'home'>, teamId: string | null): Side | null {
  if (teamId === null) return null;
  return teamId === sheet.visitors.teamId ? 'visitors' : teamId === sheet.home.teamId ? 'home' : null;
}

function played(sheet: TableSheet, side: Side | null, line: DeskEntry, period: number): TableSheet {
  if (line.kind === 'bout') return boutEnded(sheet, side, line);
  if (side === null) return sheet;
  const team = sheet[side];
  switch (line.kind) {
    case 'basket':
    case 'score':
      return { ...sheet, [side]: scored(sheet, team, line, period) };
    case 'foul':
      return fouled(sheet, side, line, period);
    case 'timeOut':
      return timeOutTaken(sheet, side, line, period);
    case 'substitution':
      return { ...sheet, [side]: { ...team, substitutions: team.substitutions + 1 } };
    case 'serve':
    case 'batter':
      return { ...sheet, attackingTeamId: team.teamId, [side]: { ...team, atBat: line.playerNumber } };
    default:
      return sheet;
  }
}

const OF_PLAY: ReadonlySet<DeskEntry['kind']> = new Set(['basket', 'score', 'foul', 'timeOut', 'substitution', 'serve', 'batter', 'bout', 'happening']);

function clockHasRun(sheet: TableSheet, line: DeskEntry, period: number): boolean {
  return line.kind !== 'timeOut' && sheet.timeOutAtZeroIn !== null && (period > sheet.timeOutAtZeroIn || (secondsOfClock(line.clock) ?? 0) > 0);
}

/**
 * The sheet with one more line of the log. Lines of another game, reads, notes and what is taken back change nothing:
 * taking back is not folded in, the sheet of what stands is made anew (`sheetOf`).
 */
export function foldLine(sheet: TableSheet, line: DeskEntry): TableSheet {
  if (line.gameId !== sheet.gameId) return sheet;
  const period = periodNumber(sheet.rules, line.period) ?? currentPeriod(sheet);
  if (line.kind === 'periodEnd') {
    return { ...sheet, ended: Array.from({ length: Math.max(sheet.ended.length, period) }, (_, place) => place === period - 1 || sheet.ended[place] === true), latestPeriod: Math.max(sheet.latestPeriod, period) };
  }
  if (line.kind === 'book') return { ...sheet, book: { ...sheet.book, [period]: { agrees: line.detail?.['agrees'] === true, words: word(line, 'words') } } };
  if (!OF_PLAY.has(line.kind)) return sheet;
  const before = clockHasRun(sheet, line, period) ? { ...sheet, timeOutAtZeroIn: null, timeOutsWereSuccessive: false } : sheet;
  const next = played(before, sideOf(sheet, line.teamId), line, period);
  return next.latestPeriod >= period ? next : { ...next, latestPeriod: period };
}

/** The sheet of what stands in a log, in one pass. */
export function sheetOf(game: Pick<DeskGame, 'gameId' | 'visitors' | 'home'>, rules: SportRules, lines: readonly DeskEntry[]): TableSheet {
  return lines.some((line) => line.kind === 'takenBack')
    ? standing(lines).reduce(foldLine, emptySheet(game, rules))
    : lines.reduce(foldLine, emptySheet(game, rules));
}
