import type { LineUpRow, TeamSheet } from '../../../packet/packet.ts';
import { timeOutWords } from './time-outs.ts';
import type { DeskEntry } from '../desk-entry.ts';
import { pointsOf } from './fold-line.ts';
import { ordinal, periodName, periodNumber } from './period.ts';
import { currentPeriod, isOver, setsWon } from './table-sheet.ts';
import type { FoulCall, TableSheet } from './table-sheet.ts';

/** What is said after an entry, and what is only for the table. */
export interface CallLine {
  readonly entryId: string;
  /** empty where nothing is announced */
  readonly text: string;
  /** how the name in it is said; null where nobody wrote it down */
  readonly sayAs: string | null;
  /** for the table, not for the microphone */
  readonly note: string | null;
}

/** The teams as they are tonight, and whether the department reads foul counts. */
export interface CallTerms {
  readonly visitors: TeamSheet;
  readonly home: TeamSheet;
  readonly foulCountsRead: boolean;
}

interface Said {
  readonly team: TeamSheet;
  /** "number 12, Łukasz Wren"; null where the family chose silence or no player is meant */
  readonly player: string | null;
  readonly sayAs: string | null;
  /** the player may be counted aloud */
  readonly isNumbered: boolean;
}

const SHOTS = { none: null, oneAndOne: 'One and one', two: 'Two shots' } as const;
const joined = (...parts: readonly (string | null)[]): string => parts.filter((part) => part !== null && part !== '').join(', ');

/** A player as the family allows it to be said: number and name, number only, "a member of the team", nothing. */
export function playerSaid(row: LineUpRow | undefined, number: string | null, hasNumbers = true): Pick<Said, 'player' | 'sayAs' | 'isNumbered'> {
  const numbered = number === null || number === '' || !hasNumbers ? null : `number ${number}`;
  if (row === undefined || row.instead === null || row.instead === 'number only') {
    const name = row?.instead === null ? row.name : null;
    return { player: joined(numbered, name) || null, sayAs: name === null ? null : (row?.sayAs ?? null), isNumbered: number !== null };
  }
  return { player: row.instead === 'a member of the team' ? row.instead : null, sayAs: null, isNumbered: false };
}

function said(line: DeskEntry, terms: CallTerms, hasNumbers: boolean): Said | null {
  const team = [terms.visitors, terms.home].find((one) => one.teamId === line.teamId);
  if (!team) return null;
  const row = line.playerNumber === null ? undefined : team.rows.find((one) => one.number === line.playerNumber);
  return { team, ...playerSaid(row, line.playerNumber, hasNumbers) };
}

function foulCall(sheet: TableSheet, line: DeskEntry, who: Said, terms: CallTerms): Omit<CallLine, 'entryId'> {
  const foul: FoulCall | null = sheet.lastFoul?.entryId === line.id ? sheet.lastFoul : null;
  const other = who.team.side === 'home' ? terms.visitors.nickname : terms.home.nickname;
  const shots = foul === null || SHOTS[foul.award] === null ? null : `${SHOTS[foul.award]} for the ${other}.`;
  const per = sheet.rules.teamFouls?.countedPer ?? null;
  const playersCount = foul && foul.playerFouls > 0 ? `${ordinal(foul.playerFouls)} on number ${foul.playerNumber}` : null;
  const teamsCount = foul && per !== null ? `the team’s ${ordinal(foul.teamFouls)} of the ${per}` : null;
  const out = foul?.disqualifies ? 'That is the limit: out of the game. Tell the official.' : null;
  const counts = terms.foulCountsRead && foul ? [who.isNumbered && foul.playerFouls > 0 ? `the player’s ${ordinal(foul.playerFouls)}` : null, teamsCount] : [];
  const text = [`${joined(`Foul on the ${who.team.nickname}`, who.player, ...counts)}.`, shots].filter((part) => part !== null).join(' ');
  return { text, sayAs: who.sayAs, note: [capital(joined(playersCount, teamsCount)), out].filter((part) => part).join('. ').replace(/([^.])$/, '$1.') || null };
}

const capital = (text: string): string => text.replace(/^./u, (first) => first.toUpperCase());

function scoreCall(sheet: TableSheet, line: DeskEntry, who: Said): Omit<CallLine, 'entryId'> {
  const rule = sheet.rules.scores.find((score) => score.what === line.detail?.['what']);
  if (rule?.isSilent) return { text: '', sayAs: null, note: null };
  const { player, sayAs, team } = who;
  if (line.kind === 'score') return { text: [`${rule?.words ?? 'Points'}, ${team.nickname}.`, player === null ? null : `${capital(player)}.`].filter(Boolean).join(' '), sayAs, note: null };
  const points = pointsOf(sheet.rules, line);
  return { text: `${joined(team.nickname, player, points === 3 ? 'for three' : points === 1 ? 'the free throw' : null)}.`, sayAs, note: null };
}

/** Visitors first, then home. */
function periodCall(sheet: TableSheet, line: DeskEntry, { visitors, home }: CallTerms): Omit<CallLine, 'entryId'> {
  const period = periodNumber(sheet.rules, line.period) ?? currentPeriod(sheet);
  const both = (one: number, other: number): string => `${visitors.nickname} ${one}, ${home.nickname} ${other}.`;
  const end = `End of ${periodName(sheet.rules, period).startsWith('overtime') ? '' : 'the '}${periodName(sheet.rules, period)}.`;
  if (sheet.rules.sets !== null) {
    const points = both(sheet.visitors.points[period - 1] ?? 0, sheet.home.points[period - 1] ?? 0);
    return { text: `${end} ${points} Sets: ${both(setsWon(sheet, 'visitors'), setsWon(sheet, 'home'))}`, sayAs: null, note: null };
  }
  const score = both(sheet.visitors.total, sheet.home.total);
  return { text: isOver(sheet) ? `Final score: ${score}` : `${end} ${score}`, sayAs: null, note: null };
}

function timeOutCall(sheet: TableSheet, line: DeskEntry, who: Said): Omit<CallLine, 'entryId'> {
  const kinds = sheet.rules.timeOuts.filter((rule) => rule.per !== 'extraPeriod');
  const name = typeof line.detail?.['timeOut'] === 'string' ? line.detail['timeOut'] : '';
  const which = kinds.length > 1 && name !== '' ? ` ${timeOutWords(name)}.` : '';
  const note = sheet.timeOutsWereSuccessive ? 'Time had run out, and this time-out follows another: ask the official.' : null;
  return { text: `Time-out, ${who.team.nickname}.${which}`, sayAs: null, note };
}

function batterCall(sheet: TableSheet, line: DeskEntry, who: Said): Omit<CallLine, 'entryId'> {
  const row = who.team.rows.find((one) => one.number === line.playerNumber);
  const short = row?.position?.replace(/^\d{1,2}[.)]?\s+/, '').toUpperCase() ?? null;
  const position = sheet.rules.positions.find((one) => one.short === short)?.name ?? null;
  const isAnnounced = row === undefined || row.instead === null;
  return { text: `${joined('Now batting', isAnnounced && position !== null ? `the ${position}` : null, who.player)}.`, sayAs: who.sayAs, note: null };
}

function boutCall(sheet: TableSheet, line: DeskEntry, terms: CallTerms): Omit<CallLine, 'entryId'> {
  const rule = sheet.rules.bouts.find((bout) => bout.how === line.detail?.['how']);
  const weight = String(line.detail?.['weightClass'] ?? '');
  const who = said(line, terms, false);
  const score = `Team score: ${terms.visitors.nickname} ${sheet.visitors.total}, ${terms.home.nickname} ${sheet.home.total}.`;
  if (who === null) return { text: `At ${weight} pounds, ${rule?.words ?? 'no winner'}. ${score}`, sayAs: null, note: null };
  return { text: `${joined(`At ${weight} pounds the winner`, rule ? `by ${rule.words}` : null, who.team.nickname, who.player)}. ${score}`, sayAs: who.sayAs, note: null };
}

/**
 * The announcement for an entry, in the form the department chose: a foul without counts, unless it reads them. A player
 * is named as the family allows. Null for an entry that calls for nothing.
 *
 * @param sheet with the entry folded in, and nothing after it
 * @source order and wording: common practice, no source; no counts: NFHS 2014-15 Basketball Point of Emphasis
 */
export function callLine(sheet: TableSheet, line: DeskEntry, terms: CallTerms): CallLine | null {
  const call = callOf(sheet, line, terms);
  return call === null || (call.text === '' && call.note === null) ? null : { entryId: line.id, ...call };
}

function callOf(sheet: TableSheet, line: DeskEntry, terms: CallTerms): Omit<CallLine, 'entryId'> | null {
  if (line.gameId !== sheet.gameId) return null;
  if (line.kind === 'periodEnd') return periodCall(sheet, line, terms);
  if (line.kind === 'bout') return boutCall(sheet, line, terms);
  const who = said(line, terms, sheet.rules.numberRule !== 'none');
  if (who === null) return null;
  switch (line.kind) {
    case 'foul':
      return foulCall(sheet, line, who, terms);
    case 'basket':
    case 'score':
      return scoreCall(sheet, line, who);
    case 'timeOut':
      return timeOutCall(sheet, line, who);
    case 'substitution':
      return { text: `${joined(`Now in for the ${who.team.nickname}`, who.player)}.`, sayAs: who.sayAs, note: null };
    case 'serve':
      return { text: `${joined(`Serving, ${who.team.nickname}`, who.player)}.`, sayAs: who.sayAs, note: null };
    case 'batter':
      return batterCall(sheet, line, who);
    default:
      return null;
  }
}
