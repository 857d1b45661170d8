import type { LineUpRow, TeamSheet } from '../../../packet/packet.ts';
import { standing } from '../../take-back.ts';
import type { DeskEntry } from '../desk-entry.ts';
import { isSameName } from './worn-tonight.ts';

const text = (line: DeskEntry, field: string): string | null => {
  const value = line.detail?.[field];
  return typeof value === 'string' && value.trim() !== '' ? value.trim() : null;
};

/** By number as a number; `0` before `00`. */
const byNumber = (one: LineUpRow, other: LineUpRow): number => Number(one.number) - Number(other.number) || one.number.length - other.number.length;

const newRow = (number: string, name: string | null, sayAs: string | null): LineUpRow =>
  ({ playerId: '', number, name, sayAs, position: null, grade: null, isStarter: false, instead: null });

/** What a `worn` entry makes of a listed player. Who is not announced by name keeps being nobody's name. */
function wornBy(row: LineUpRow, line: DeskEntry): LineUpRow {
  if (row.instead !== null) return { ...row, number: line.playerNumber! };
  const name = text(line, 'name');
  // Somebody else under this number: what is known of the listed player is not theirs.
  if (name !== null && !isSameName(name, row.name)) return newRow(line.playerNumber!, name, text(line, 'sayAs'));
  return { ...row, number: line.playerNumber!, sayAs: text(line, 'sayAs') ?? row.sayAs };
}

/**
 * The list of a team as it is worn tonight: the one that was printed, with what the table has typed since. A listed player
 * is found by the number worn instead of, else by the number itself; a number that nobody has is a new player.
 *
 * @param lines the whole log; only standing `worn` entries of this team count
 */
export function rosterTonight(team: TeamSheet, lines: readonly DeskEntry[]): TeamSheet {
  const typed = lines.filter((line) => line.kind === 'worn' && line.teamId === team.teamId && line.playerNumber !== null);
  if (typed.length === 0) return team;
  const worn = standing([...typed, ...lines.filter((line) => line.kind === 'takenBack')]);
  // Which shirt a player had on the list does not change by what somebody else puts on.
  const rows = team.rows.map((row) => ({ listed: row.number as string | null, row }));
  for (const line of worn) {
    const instead = text(line, 'wornInstead');
    const found = instead === null ? rows.find((one) => one.row.number === line.playerNumber) : (rows.find((one) => one.listed === instead) ?? rows.find((one) => one.row.number === instead));
    if (found) found.row = wornBy(found.row, line);
    else rows.push({ listed: null, row: newRow(line.playerNumber!, text(line, 'name'), text(line, 'sayAs')) });
  }
  return { ...team, rows: rows.map(({ row }) => row).toSorted(byNumber) };
}
