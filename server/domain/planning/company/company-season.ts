import type { PlanPromise, PlanSeason } from '../season.ts';
import { grouped } from './grouped.ts';
import { mayStandApart } from './rivals.ts';

/** A window of a game, numbered through the season. */
export interface Site {
  readonly game: number;
  /** its place in the night */
  readonly order: number;
  readonly key: string;
  /** what reads of nobody we know leave free */
  readonly places: number;
  readonly groupPlaces: Readonly<Record<string, number>>;
  readonly seconds: number;
}

/** A promise in a window for a slot: where so many of its reads may be. */
export interface Cell {
  readonly promise: number;
  /** index in the promise's slots; -1 for reads that stay although no slot asks for them there */
  readonly slot: number;
  readonly site: number;
  /** reads that stay here whatever the plan */
  readonly staying: number;
  readonly most: number;
  /** 0 is the window the promise likes best */
  readonly rank: number;
}

/** A season by numbers: what both the model and the repair of a plan are made from. */
export interface CompanySeason {
  readonly season: PlanSeason;
  readonly sites: readonly Site[];
  readonly sitesOfGame: readonly (readonly number[])[];
  readonly cells: readonly Cell[];
  readonly cellsOfPromise: readonly (readonly number[])[];
  readonly cellsOfSite: readonly (readonly number[])[];
  /** reads of a promise that lie in a window now, by `promise site` */
  readonly before: ReadonlyMap<string, number>;
}

export const whereOf = (promise: number, place: number): string => `${promise} ${place}`;

/** How a window stands in what a promise names: its kind or its key, the preferred first; -1 where it may not be read. */
function rankOf(promise: PlanPromise, window: { readonly key: string; readonly kind: string }): number {
  return promise.windows.findIndex((one) => one === window.key || one === window.kind);
}

function sitesOf(season: PlanSeason, promiseAt: ReadonlyMap<string, number>): Site[] {
  const strangers = new Map<string, number>();
  for (const read of season.placed) {
    if (promiseAt.has(read.promiseId)) continue;
    const at = `${read.gameId} ${read.windowKey}`;
    strangers.set(at, (strangers.get(at) ?? 0) + 1);
  }
  return season.games.flatMap((game, index) =>
    game.windows.map(({ key, places, groupPlaces, seconds }, order) => ({
      game: index, order, key, groupPlaces, seconds: seconds ?? Infinity, places: Math.max(0, places - (strangers.get(`${game.gameId} ${key}`) ?? 0)),
    })),
  );
}

/** Reads of each promise that stay, by site; what lies on a locked night stays too. */
function placedBySite(season: PlanSeason, sites: readonly Site[], promiseAt: ReadonlyMap<string, number>): { before: Map<string, number>; staying: Map<string, number> } {
  const siteAt = new Map(sites.map((site, index) => [`${season.games[site.game]!.gameId} ${site.key}`, index]));
  const locked = new Set(season.games.filter((game) => game.isLocked).map((game) => game.gameId));
  const before = new Map<string, number>();
  const staying = new Map<string, number>();
  for (const read of season.placed) {
    const promise = promiseAt.get(read.promiseId);
    const site = siteAt.get(`${read.gameId} ${read.windowKey}`);
    if (promise === undefined || site === undefined) continue;
    const where = whereOf(promise, site);
    before.set(where, (before.get(where) ?? 0) + 1);
    if (read.isFixed || locked.has(read.gameId)) staying.set(where, (staying.get(where) ?? 0) + 1);
  }
  return { before, staying };
}

function mostAt(promise: PlanPromise, slotReads: number, site: Site): number {
  const group = promise.placeGroup === null ? Infinity : (site.groupPlaces[promise.placeGroup] ?? Infinity);
  const spoken = promise.seconds > 0 ? Math.floor(site.seconds / promise.seconds) : Infinity;
  return Math.max(0, Math.min(slotReads, site.places, group, promise.mostPerGame ?? Infinity, spoken));
}

interface Numbered {
  readonly season: PlanSeason;
  readonly sites: readonly Site[];
  readonly sitesOfGame: readonly (readonly number[])[];
  readonly gameAt: ReadonlyMap<string, number>;
  readonly staying: ReadonlyMap<string, number>;
}

/** The cells of one promise. Reads that stay fill its slots in their order. */
function cellsOf({ season, sites, sitesOfGame, gameAt, staying }: Numbered, promise: number): Cell[] {
  const told = season.promises[promise]!;
  const left = new Map([...staying].flatMap(([where, reads]) => (where.startsWith(`${promise} `) ? [[Number(where.split(' ')[1]), reads] as const] : [])));
  const cells = told.slots.flatMap((slot, index) => {
    let room = slot.reads;
    return slot.gameIds.flatMap((gameId) => {
      const game = gameAt.get(gameId);
      return (game === undefined ? [] : sitesOfGame[game]!).flatMap((site): Cell[] => {
        const stays = Math.min(left.get(site) ?? 0, isLastSlotOf(told, index, gameId) ? Infinity : room);
        const rank = rankOf(told, season.games[game!]!.windows[sites[site]!.order]!);
        const most = rank === -1 || season.games[game!]!.isLocked ? 0 : mostAt(told, slot.reads, sites[site]!);
        if (stays > 0) left.set(site, left.get(site)! - stays);
        room = Math.max(0, room - stays);
        return most === 0 && stays === 0 ? [] : [{ promise, slot: index, site, staying: stays, most: Math.max(stays, most), rank: Math.max(0, rank) }];
      });
    });
  });
  const outside = [...left].filter(([, reads]) => reads > 0).map(([site, reads]): Cell => ({ promise, slot: -1, site, staying: reads, most: reads, rank: 0 }));
  return [...cells, ...outside];
}

/** Without the cells in which a rival that stays leaves no room. */
function besideWhatStays(season: PlanSeason, sites: readonly Site[], cells: readonly Cell[]): Cell[] {
  const stays = grouped(cells.filter((cell) => cell.staying > 0), (cell) => sites[cell.site]!.game);
  const promiseOf = (cell: Cell): PlanPromise => season.promises[cell.promise]!;
  const isFree = (cell: Cell): boolean => {
    const { game, order } = sites[cell.site]!;
    return (stays.get(game) ?? []).every((other) => mayStandApart(promiseOf(cell), promiseOf(other), Math.abs(sites[other.site]!.order - order)));
  };
  return cells.flatMap((cell) => {
    const most = cell.staying === cell.most || isFree(cell) ? cell.most : cell.staying;
    return most === 0 ? [] : [{ ...cell, most }];
  });
}

const isLastSlotOf = (promise: PlanPromise, index: number, gameId: string): boolean => !promise.slots.some((slot, other) => other > index && slot.gameIds.includes(gameId));

function numbered(cells: readonly Cell[], length: number, of: (cell: Cell) => number): number[][] {
  const groups: number[][] = Array.from({ length }, () => []);
  cells.forEach((cell, index) => groups[of(cell)]!.push(index));
  return groups;
}

/** A season by numbers. */
export function companySeason(season: PlanSeason): CompanySeason {
  const promiseAt = new Map(season.promises.map((promise, index) => [promise.promiseId, index]));
  const gameAt = new Map(season.games.map((game, index) => [game.gameId, index]));
  const sites = sitesOf(season, promiseAt);
  const sitesOfGame: number[][] = season.games.map(() => []);
  sites.forEach((site, index) => sitesOfGame[site.game]!.push(index));
  const { before, staying } = placedBySite(season, sites, promiseAt);
  const cells = besideWhatStays(season, sites, season.promises.flatMap((_, promise) => cellsOf({ season, sites, sitesOfGame, gameAt, staying }, promise)));
  return {
    season, sites, sitesOfGame, cells, before,
    cellsOfPromise: numbered(cells, season.promises.length, (cell) => cell.promise),
    cellsOfSite: numbered(cells, sites.length, (cell) => cell.site),
  };
}
