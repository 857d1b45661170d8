import type { PlanGame, PlanPromise, PlanSeason } from '../season.ts';
import { windowInWords } from './window.ts';

/** How things of a plan are called in a sentence. */
export interface PlanNames {
  /** "Snowmelt Creamery" */
  readonly sponsor: (promiseId: string | undefined) => string;
  /** "concession read" */
  readonly readKind: (promiseId: string | undefined) => string;
  /** "Herons at Kestrels" */
  readonly game: (gameId: string | undefined) => string;
  /** "the 2nd time-out" */
  readonly window: (windowKey: string | undefined) => string;
}

/** "Concession read" within a sentence is "concession read"; "PA read" stays. */
const inSentence = (name: string): string => (/^\p{Lu}\p{Ll}/u.test(name) ? `${name.charAt(0).toLowerCase()}${name.slice(1)}` : name);

/** The names of a season's promises and games; what is not of the season is named in general. */
export function namesOf(season: Pick<PlanSeason, 'games' | 'promises'>): PlanNames {
  const promises = new Map<string | undefined, PlanPromise>(season.promises.map((promise) => [promise.promiseId, promise]));
  const games = new Map<string | undefined, PlanGame>(season.games.map((game) => [game.gameId, game]));
  return {
    sponsor: (promiseId) => promises.get(promiseId)?.sponsorName ?? 'another sponsor',
    readKind: (promiseId) => inSentence(promises.get(promiseId)?.readKindName ?? 'read'),
    game: (gameId) => games.get(gameId)?.label ?? 'that game',
    window: (windowKey) => (windowKey === undefined ? 'the window' : windowInWords(windowKey)),
  };
}
