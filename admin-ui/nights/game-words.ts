import { LEVEL_WORDS, wordFor } from '../words/choices.ts';
import type { Night } from './types.ts';

type GameOfNight = Night['games'][number];

/** Two games of one night may have the same teams, so the level always stands first. */
export const gameOfNight = (game: GameOfNight): string => `${wordFor(LEVEL_WORDS, game.level)}: ${game.label}`;

/** Level and hour, and the teams only where the night is not named after them. */
export const gameUnder = (night: Night, game: GameOfNight): string =>
  `${game.label === night.title ? wordFor(LEVEL_WORDS, game.level) : gameOfNight(game)}, ${game.startsAtShown || 'no hour yet'}`;

/** The level of each game, and its teams too where one level plays twice. */
export function levelsOf(night: Night): Map<string, string> {
  const isAlone = (game: GameOfNight): boolean => night.games.filter(({ level }) => level === game.level).length === 1;
  return new Map(night.games.map((game) => [game.id, isAlone(game) ? wordFor(LEVEL_WORDS, game.level) : gameOfNight(game)]));
}
