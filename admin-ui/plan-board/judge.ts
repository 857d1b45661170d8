import { brokenBy, seasonAround } from '../../server/domain/planning/board/change.ts';
import type { BoardChange } from '../../server/domain/planning/board/change.ts';
import { isOfCompany } from '../../server/domain/planning/plan-fault.ts';
import type { PlanSeason } from '../../server/domain/planning/season.ts';
import { faultInWords } from '../../server/domain/planning/words/fault.ts';
import { namesOf } from '../../server/domain/planning/words/names.ts';
import type { Card, Spot } from './types.ts';

/** What would become of a read there. */
export interface Verdict {
  /** it fits; a wish is left unmet; a wall stands in the way */
  readonly tone: 'good' | 'care' | 'bad';
  readonly sentences: readonly string[];
  /** only competitors are in the way: the director may allow it, saying why */
  readonly needsReason: boolean;
}

const FITS: Verdict = { tone: 'good', sentences: ['It fits.'], needsReason: false };
const STAYS: Verdict = { tone: 'good', sentences: ['Here it stands now.'], needsReason: false };

/** Checked as the server will check it, but only as far as the games it touches. */
export function judge(season: PlanSeason, changes: readonly BoardChange[], gameIds: readonly string[], promiseIds: readonly string[]): Verdict {
  const near = seasonAround(season, gameIds, promiseIds);
  const faults = brokenBy(near, changes);
  if (faults.length === 0) return FITS;
  const names = namesOf(season);
  const walls = faults.filter((fault) => fault.severity === 'wall');
  return {
    tone: walls.length > 0 ? 'bad' : 'care',
    sentences: [...new Set(faults.map((fault) => faultInWords(fault, names)))],
    needsReason: walls.length > 0 && walls.every(isOfCompany),
  };
}

/** A card carried to a window. */
export function judgeMove(season: PlanSeason, card: Card, to: Spot): Verdict {
  if (card.gameId === to.gameId && card.windowKey === to.windowKey) return STAYS;
  return judge(season, [{ kind: 'move', placementId: card.id, ...to }], [card.gameId, to.gameId], [card.promiseId]);
}

/** A read that has no place yet, put into a window. */
export function judgeAdd(season: PlanSeason, promiseId: string, to: Spot): Verdict {
  return judge(season, [{ kind: 'add', promiseId, ...to }], [to.gameId], [promiseId]);
}

/** Why a card stays where it is; null where it may be moved. */
export function whyItStays(season: PlanSeason, card: Card): string | null {
  if (card.isHeld) return 'This place is kept for an open offer; planning the season again moves it.';
  if (card.isLogged) return 'The table has logged this read already, so its place stays.';
  if (season.games.find((game) => game.gameId === card.gameId)?.isLocked) return 'This night is locked: nothing is planned into or out of it.';
  return null;
}
