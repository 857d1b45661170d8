import { whyNotMove, type GameMove } from '../../server/domain/season/game.ts';
import type { Game } from './types.ts';

/** Whether a move may be made now, by the table the server refuses by. */
export function mayMove(game: Game, move: GameMove): boolean {
  return whyNotMove({ status: game.status }, move) === null;
}
