import { LEVEL_IN_LABEL } from '../../season/team.dto.ts';
import type { PlannedGame } from '../planned-games.service.ts';

type Labelled = Pick<PlannedGame, 'id' | 'label' | 'level' | 'playedOn'>;

/** What each game is called; two of one day that would be called the same are told apart by their level: "Herons at Kestrels, JV". */
export function labelsOf(games: readonly Labelled[]): ReadonlyMap<string, string> {
  const isAlone = (game: Labelled): boolean => games.every((other) => other.id === game.id || other.label !== game.label || other.playedOn !== game.playedOn);
  return new Map(games.map((game) => [game.id, isAlone(game) ? game.label : `${game.label}, ${LEVEL_IN_LABEL[game.level]}`]));
}
