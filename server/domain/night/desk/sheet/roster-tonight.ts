import type { LineUpRow, TeamSheet } from '../../../packet/packet.ts';
import { standing } from '../../take-back.ts';
import type { DeskEntry } from '../desk-entry.ts';
import { isSameName } from './worn-tonight.ts';

const text = (line: DeskEntry, field: string): string | null => {
  const value = line.detail?.[field];
  return typeof value === 'string' && value.trim() !== '' ? value.trim() : null;
};

const newRow = (number: string, name: string | null, sayAs: string | null): LineUpRow =>
  ({ playerId: '', number, name, sayAs, position: null, grade: null, isStarter: false, instead: null });

interface Worn {
  readonly number: string;
  readonly name: string | null;
  readonly sayAs: string | null;
  /** somebody whose name nobody may say */
  readonly isNameless: boolean;
}

/** What an entry says; on a list of ours a name that the office did not give is dropped, whoever wrote it. */
function wornIn(line: DeskEntry, team: TeamSheet, isOurs: boolean): Worn {
  const name = text(line, 'name');
  const isNameless = line.detail?.['isNotListed'] === true || (isOurs && name !== null && !team.rows.some((row) => isSameName(row.name, name)));
  return { number: line.playerNumber!, name: isNameless ? null : name, sayAs: isNameless ? null : text(line, 'sayAs'), isNameless };
}

/** What a `worn` entry makes of a listed player. Who is not announced by name keeps being nobody's name. */
function wornBy(row: LineUpRow, { number, name, sayAs, isNameless }: Worn): LineUpRow {
  if (row.instead !== null) return { ...row, number };
  // Somebody else under this number: what is known of the listed player is not theirs.
  if (isNameless || (name !== null && !isSameName(name, row.name))) return newRow(number, name, sayAs);
  return { ...row, number, sayAs: sayAs ?? row.sayAs };
}

/**
 * The list of a team as it is worn tonight: the one that was printed, with what the table has typed since. A listed player
 * is found by the number worn instead of, else by the number itself; a number that nobody has is a new player, at the end:
 * every number keeps its place under the thumb. On a list of ours nobody has a name that the office did not give.
 *
 * @param lines the whole log; only standing `worn` entries of this team count
 * @param isOurs a team of the department's own schools
 */
export function rosterTonight(team: TeamSheet, lines: readonly DeskEntry[], isOurs: boolean): TeamSheet {
  const typed = lines.filter((line) => line.kind === 'worn' && line.teamId === team.teamId && line.playerNumber !== null);
  if (typed.length === 0) return team;
  const worn = standing([...typed, ...lines.filter((line) => line.kind === 'takenBack')]);
  // Which shirt a player had on the list does not change by what somebody else puts on.
  const rows = team.rows.map((row) => ({ listed: row.number as string | null, row }));
  for (const line of worn) {
    const instead = text(line, 'wornInstead');
    const entry = wornIn(line, team, isOurs);
    const found = instead === null ? rows.find((one) => one.row.number === line.playerNumber) : (rows.find((one) => one.listed === instead) ?? rows.find((one) => one.row.number === instead));
    if (found) found.row = wornBy(found.row, entry);
    else rows.push({ listed: null, row: newRow(entry.number, entry.name, entry.sayAs) });
  }
  return { ...team, rows: rows.map(({ row }) => row) };
}
