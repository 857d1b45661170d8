import type { WindowKind } from '../../season/sport-rules.ts';
import { kindOfWindow, windowsNarrowed } from '../../season/window-names.ts';
import { covers } from '../../sponsorship/covered-games.ts';
import type { CommitmentTerms, CoveredGame } from '../../sponsorship/covered-games.ts';
import type { Separation } from '../../sponsorship/separation.ts';
import type { PlacedRead, PlanPromise, PlanSlot } from '../season.ts';

/** The kind of read that is to be placed. */
export interface KindToPlan {
  readonly readKindId: string;
  readonly readKindName: string;
  readonly placeGroup: string | null;
  readonly sponsorsPerGame: number;
  readonly seconds: number;
  /** windows by kind or key, the preferred first */
  readonly kindWindows: readonly string[];
}

/** A promise as its row names it, with what it still owes. */
export interface PromiseToPlan extends KindToPlan, CommitmentTerms {
  readonly source: PlanPromise['source'];
  readonly dealId: string;
  readonly sponsorId: string;
  readonly sponsorName: string;
  readonly categoryId: string;
  /** narrower than the kind's windows; none named: all of them */
  readonly windowKinds: readonly WindowKind[];
  readonly leastPerGame: number | null;
  readonly mostPerGame: number | null;
  readonly pinnedGameIds: readonly string[];
  readonly priority: number;
  readonly separation: Separation;
  /** reads still to be placed: of the whole term (null), or of that game or night, as the promise counts */
  readonly owed: (key: string | null) => number;
}

/** A game that is still to be played, with its night. */
export interface GameOfPromise extends CoveredGame {
  readonly nightId: string | null;
}

/**
 * The windows a promise may be read in: those of its kind, the preferred first, and of these only the kinds that the
 * promise names where it names any.
 */
export function windowsOfPromise(kindWindows: readonly string[], windowKinds: readonly WindowKind[]): string[] {
  // A window named by its key comes before the others of its kind, it does not shut them out.
  const named = windowsNarrowed(kindWindows, windowKinds).flatMap((window) => [kindOfWindow(window) + /\d*$/.exec(window)![0], kindOfWindow(window)]);
  return [...new Set(named)];
}

/**
 * A promise with its slots: one for the whole term, or one for each game or night that is counted by itself. A slot never
 * asks for fewer reads than are fixed in it. A read that is fixed on a game the promise no longer covers counts for the term.
 *
 * @param games those still to be played, in the order of play
 * @param placed reads of this promise that have a place on those games
 */
export function planPromise(promise: PromiseToPlan, games: readonly GameOfPromise[], placed: readonly PlacedRead[]): PlanPromise {
  const own = games.filter((game) => covers(promise, game));
  const ids = new Set(own.map((game) => game.id));
  return {
    promiseId: promise.id,
    source: promise.source,
    dealId: promise.dealId,
    sponsorId: promise.sponsorId,
    sponsorName: promise.sponsorName,
    categoryId: promise.categoryId,
    readKindId: promise.readKindId,
    readKindName: promise.readKindName,
    placeGroup: promise.placeGroup,
    sponsorsPerGame: promise.sponsorsPerGame,
    seconds: promise.seconds,
    slots: slotsOf(promise, own, placed),
    windows: windowsOfPromise(promise.kindWindows, promise.windowKinds),
    leastPerGame: promise.leastPerGame ?? 0,
    mostPerGame: promise.mostPerGame,
    pinnedGameIds: promise.pinnedGameIds.filter((id) => ids.has(id)),
    priority: promise.priority === 1 || promise.priority === 3 ? promise.priority : 2,
    separation: promise.separation,
  };
}

function slotsOf(promise: PromiseToPlan, games: readonly GameOfPromise[], placed: readonly PlacedRead[]): PlanSlot[] {
  const slot = (key: string | null, gameIds: readonly string[], elsewhere = 0): PlanSlot => {
    const fixed = placed.filter((read) => read.isFixed && gameIds.includes(read.gameId)).length;
    return { reads: Math.max(fixed, promise.owed(key) - elsewhere), gameIds };
  };
  if (promise.counting === 'onOccurrence') return [];
  if (promise.counting === 'perTerm') {
    const strays = placed.filter((read) => read.isFixed && !games.some((game) => game.id === read.gameId)).length;
    return [slot(null, games.map((game) => game.id), strays)];
  }
  const keyOf = (game: GameOfPromise): string => (promise.counting === 'perGame' ? game.id : (game.nightId ?? game.id));
  const slots = [...new Set(games.map(keyOf))].map((key) => slot(key, games.filter((game) => keyOf(game) === key).map((game) => game.id)));
  return slots.filter((one) => one.reads > 0 || placed.some((read) => one.gameIds.includes(read.gameId)));
}
