import { brokenBy, seasonAround } from '../../server/domain/planning/board/change.ts';
import type { BoardChange } from '../../server/domain/planning/board/change.ts';
import { faultInWords } from '../../server/domain/planning/words/fault.ts';
import { namesOf } from '../../server/domain/planning/words/names.ts';
import type { PlanSeason } from '../../server/domain/planning/season.ts';
import { whyItStays } from './judge.ts';
import type { Card } from './types.ts';

export interface BulkMove {
  changes: (BoardChange & { kind: 'move' })[];
  /** cards that find no window there, and why */
  left: { card: Card; why: string }[];
}

/** Finds each chosen card a window of the game, in the order in which its kind prefers them; none pushes another out. */
export function moveAllTo(season: PlanSeason, cards: readonly Card[], gameId: string): BulkMove {
  const game = season.games.find((one) => one.gameId === gameId);
  const names = namesOf(season);
  const near = seasonAround(season, [gameId, ...cards.map((card) => card.gameId)], cards.map((card) => card.promiseId));
  const changes: BulkMove['changes'] = [];
  const left: BulkMove['left'] = [];
  for (const card of cards.filter((one) => one.gameId !== gameId)) {
    const wanted = season.promises.find((promise) => promise.promiseId === card.promiseId)?.windows ?? [];
    const windows = wanted.flatMap((name) => game?.windows.filter((window) => window.key === name || window.kind === name) ?? []);
    let why = whyItStays(season, card) ?? (windows.length === 0 ? 'This game has no window for it.' : null);
    let isPlaced = false;
    for (const window of why === null ? windows : []) {
      const change = { kind: 'move', placementId: card.id, gameId, windowKey: window.key } as const;
      const wall = brokenBy(near, [...changes, change]).find((fault) => fault.severity === 'wall');
      if (wall === undefined) {
        changes.push(change);
        isPlaced = true;
        break;
      }
      why ??= faultInWords(wall, names);
    }
    if (!isPlaced) left.push({ card, why: why ?? 'There is no room.' });
  }
  return { changes, left };
}
