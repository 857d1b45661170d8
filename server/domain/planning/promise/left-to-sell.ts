import type { WindowKind } from '../../season/sport-rules.ts';
import type { PlanGame, PlanPromise, PlanRead, PlanSeason, PlanWindow } from '../season.ts';

/** A read kind that could be sold. */
export interface KindToSell {
  readonly readKindId: string;
  readonly readKindName: string;
  readonly placeGroup: string | null;
  readonly sponsorsPerGame: number;
  readonly seconds: number;
  /** windows by kind or key, the preferred first */
  readonly windows: readonly string[];
}

/** Places of a read kind in games still to come, with what has them in the plan. */
export interface PlacesOfKind {
  readonly games: number;
  /** places in the windows the kind may be read in */
  readonly places: number;
  /** reads in those windows of signed contracts and makegoods, of whatever kind */
  readonly taken: number;
  /** the same of open offers */
  readonly held: number;
}

const PROBE = 'extra-reads';

/** The month of a day: `2027-01`. */
export const monthOf = (game: Pick<PlanGame, 'playedOn'>): string => game.playedOn.slice(0, 7);

/** Months with games still to come, first to last. */
export function monthsOf(season: PlanSeason): string[] {
  return [...new Set(season.games.map(monthOf))].toSorted();
}

/** Whether a window is one of a kind's. */
export function isWindowOf(kind: Pick<KindToSell, 'windows'>, window: Pick<PlanWindow, 'key' | 'kind'>): boolean {
  return kind.windows.includes(window.key) || kind.windows.includes(window.kind);
}

/** Kinds of windows of a read kind that some game has, in the order of the night. */
export function windowKindsOf(kind: Pick<KindToSell, 'windows'>, games: readonly PlanGame[]): WindowKind[] {
  return [...new Set(games.flatMap((game) => game.windows.filter((window) => isWindowOf(kind, window)).map((window) => window.kind)))];
}

const placesFor = (kind: KindToSell, window: PlanWindow): number =>
  kind.placeGroup === null ? window.places : Math.min(window.places, window.groupPlaces[kind.placeGroup] ?? window.places);

/** Places, and what has them, in the windows of a kind (or only in those of one kind of window), over these games. */
export function placesOfKind(kind: KindToSell, season: PlanSeason, reads: readonly PlanRead[], gameIds: ReadonlySet<string>, windowKind: WindowKind | null = null): PlacesOfKind {
  const sources = new Map(season.promises.map((one) => [one.promiseId, one.source]));
  const games = season.games.filter((game) => gameIds.has(game.gameId));
  const isOne = (window: PlanWindow): boolean => isWindowOf(kind, window) && (windowKind === null || window.kind === windowKind);
  const own = new Map(games.map((game) => [game.gameId, new Map(game.windows.filter(isOne).map((window) => [window.key, window]))]));
  const inside = reads.filter((read) => own.get(read.gameId)?.has(read.windowKey));
  const held = inside.filter((read) => sources.get(read.promiseId) === 'offer').length;
  return {
    games: games.length,
    places: games.flatMap((game) => [...own.get(game.gameId)!.values()]).reduce((sum, window) => sum + placesFor(kind, window), 0),
    taken: inside.length - held,
    held,
  };
}

/**
 * Reads of a kind that nobody asked for yet: as many as its places, or one for each game by itself, by a sponsor who
 * has nothing here. What finds a place beside all promises is what is left to sell.
 *
 * @param windows narrower than the kind's windows
 */
export function probeOf(kind: KindToSell, season: PlanSeason, gameIds: readonly string[], { windows = kind.windows, eachGame = false }: { windows?: readonly string[]; eachGame?: boolean } = {}): PlanPromise {
  const { places } = placesOfKind({ ...kind, windows }, season, [], new Set(gameIds));
  return {
    ...kind,
    promiseId: `${PROBE} ${kind.readKindId}`,
    source: 'offer',
    dealId: PROBE,
    sponsorId: PROBE,
    sponsorName: 'Nobody yet',
    categoryId: PROBE,
    slots: eachGame ? gameIds.map((gameId) => ({ reads: 1, gameIds: [gameId] })) : [{ reads: places, gameIds }],
    windows,
    leastPerGame: 0,
    mostPerGame: null,
    pinnedGameIds: [],
    priority: 3,
    separation: 'none',
  };
}

/** The season with further promises. */
export function withPromises(season: PlanSeason, promises: readonly PlanPromise[]): PlanSeason {
  return { ...season, promises: [...season.promises, ...promises] };
}

/** The windows of a kind narrowed to one kind of window. */
export function windowsOfOneKind(kind: KindToSell, games: readonly PlanGame[], windowKind: WindowKind): string[] {
  const keys = games.flatMap((game) => game.windows.filter((window) => window.kind === windowKind && isWindowOf(kind, window)).map((window) => window.key));
  return [...new Set(keys)];
}
