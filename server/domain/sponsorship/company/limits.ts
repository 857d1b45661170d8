import type { Day } from '../../day.ts';
import type { WindowKind } from '../../season/sport-rules.ts';
import type { ExclusiveRight } from './rights.ts';

/** A game with the school that holds it. */
export interface GameOfLimits {
  readonly gameId: string;
  /** the day it is held */
  readonly playedOn: Day;
  readonly schoolId: string | null;
}

/** Where no other sponsor of a category is read: these windows of these games. */
export interface CompanyLimit {
  readonly categoryId: string;
  /** who may be read there */
  readonly sponsorId: string;
  readonly sponsorName: string;
  readonly categoryName: string;
  readonly dealName: string;
  readonly gameIds: readonly string[];
  /** null: every window of them */
  readonly windowKinds: readonly WindowKind[] | null;
}

/**
 * The games and windows that exclusive rights keep for one sponsor of a category. A right over the days is kept when deals
 * are made, so it limits no plan.
 */
export function windowsForbidden(rights: readonly ExclusiveRight[], games: readonly GameOfLimits[]): CompanyLimit[] {
  return rights.filter((right) => right.reach !== 'season').map((right) => {
    const { categoryId, sponsorId, sponsorName, categoryName, dealName } = right;
    const isMeant = (game: GameOfLimits): boolean =>
      right.reach === 'game'
        ? right.gameIds.includes(game.gameId)
        : game.playedOn >= right.startsOn && game.playedOn <= right.endsOn && (right.schoolId === null || game.schoolId === right.schoolId);
    return {
      categoryId, sponsorId, sponsorName, categoryName, dealName,
      gameIds: games.filter(isMeant).map((game) => game.gameId),
      windowKinds: right.reach === 'window' ? right.windowKinds : null,
    };
  });
}

/** The limits that a read of this sponsor has to keep: those of its category that are somebody else's. */
export function limitsOf(limits: readonly CompanyLimit[], sponsor: { categoryId: string; sponsorId: string }): CompanyLimit[] {
  return limits.filter((limit) => limit.categoryId === sponsor.categoryId && limit.sponsorId !== sponsor.sponsorId);
}
