import { daysBetween } from '../day.ts';
import { foldedText } from './import-headings.ts';
import type { ScheduleRow } from './import-schedule-rows.ts';
import type { GameThere } from './import-schedule.ts';

/**
 * Which game each row is: by outside id first, then by team and opponent with the nearest day, the nearest
 * pairs first, home before away, earlier lines before later ones. A game is found by one row at most.
 */
export function matchGames(rows: readonly ScheduleRow[], games: readonly GameThere[]): Map<ScheduleRow, GameThere> {
  const match = new Map<ScheduleRow, GameThere>();
  const taken = new Set<string>();
  for (const row of rows) {
    const game = row.outsideId === null ? undefined : games.find((other) => other.outsideId === row.outsideId);
    if (game && !taken.has(game.id)) {
      match.set(row, game);
      taken.add(game.id);
    }
  }
  const pairs = rows
    .filter((row) => !match.has(row))
    .flatMap((row) => games.filter((game) => !taken.has(game.id) && mayBe(row, game)).map((game) => pairOf(row, game)))
    .sort((a, b) => a.days - b.days || a.otherPlace - b.otherPlace || a.otherTime - b.otherTime || a.row.line - b.row.line);
  for (const { row, game } of pairs) {
    if (match.has(row) || taken.has(game.id)) continue;
    match.set(row, game);
    taken.add(game.id);
  }
  return match;
}

function mayBe(row: ScheduleRow, game: GameThere): boolean {
  if (row.team.id !== game.teamId || foldedText(row.opponentName) !== foldedText(game.opponentName)) return false;
  // Two ids that differ are two games, whatever else agrees.
  if (row.outsideId !== null && game.outsideId !== null) return false;
  const isOpen = !game.hasLog && (game.status === 'planned' || game.status === 'postponed');
  return isOpen || row.playedOn === game.playedOn;
}

function pairOf(row: ScheduleRow, game: GameThere): { row: ScheduleRow; game: GameThere; days: number; otherPlace: number; otherTime: number } {
  return {
    row,
    game,
    days: Math.abs(daysBetween(row.playedOn, game.playedOn)),
    otherPlace: row.isHome === null || row.isHome === game.isHome ? 0 : 1,
    otherTime: row.clock === game.clock ? 0 : 1,
  };
}
