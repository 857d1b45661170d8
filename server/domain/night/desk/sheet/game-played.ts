import type { EntryKind } from '../../log-entry.ts';
import { takenBackIds } from '../../take-back.ts';
import type { DeskEntry } from '../desk-entry.ts';

/** What is only logged of the game that is played; a read, a book check or a list may be of any game of the night. */
const PLAY: readonly EntryKind[] = ['happening', 'foul', 'basket', 'score', 'substitution', 'timeOut', 'periodEnd', 'serve', 'batter', 'bout'];

/**
 * The game that the log says is played: the one of the latest line of play that stands.
 *
 * @param lines the whole log as far as it is known, in its order
 * @returns null before the first line of play of these games
 */
export function gamePlayed<Game extends { readonly gameId: string }>(games: readonly Game[], lines: readonly DeskEntry[]): Game | null {
  const gone = takenBackIds(lines);
  const latest = lines.findLast((line) => PLAY.includes(line.kind) && !gone.has(line.id) && games.some((game) => game.gameId === line.gameId));
  return games.find((game) => game.gameId === latest?.gameId) ?? null;
}
