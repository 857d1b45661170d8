import type { GameForPacket } from './night-for-packet.ts';
import type { Cue } from './packet.ts';
import { EMERGENCY_MOMENTS } from './script.ts';

const LETTERS = { pregame: 'P', deadBall: 'M', timeout: 'T', betweenPeriods: 'B', halftime: 'H', postgame: 'F' } as const;

function letterOf({ window, moment, gameId }: Pick<Cue, 'window' | 'moment' | 'gameId'>): string {
  if (window !== null) return LETTERS[window];
  if ((EMERGENCY_MOMENTS as readonly string[]).includes(moment)) return 'E';
  return gameId === null ? 'N' : 'S';
}

/**
 * What the desk logs a cue by: a letter for where it stands (P before the game, M when it happens, T time-out, B between
 * periods, H halftime, F after the game, S reference, N notice, E emergency) and a running number; from the second game of
 * a night on with the game's number before it, `2-H3`. The log counts by the cue's key, never by this.
 */
export function withCodes(cues: readonly Cue[], games: readonly Pick<GameForPacket, 'gameId'>[]): Cue[] {
  const used = new Map<string, number>();
  return cues.map((cue) => {
    const game = games.findIndex(({ gameId }) => gameId === cue.gameId);
    const beginning = `${game > 0 ? `${game + 1}-` : ''}${letterOf(cue)}`;
    const number = (used.get(beginning) ?? 0) + 1;
    used.set(beginning, number);
    return { ...cue, code: `${beginning}${number}` };
  });
}
