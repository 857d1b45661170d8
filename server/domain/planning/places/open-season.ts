import type { PlacedRead, PlanGame, PlanPromise, PlanSeason, PlanWindow } from '../season.ts';

/** A window with what is left of it beside the reads that stay. */
export interface OpenWindow {
  readonly key: string;
  readonly kind: PlanWindow['kind'];
  /** place of the window among those of its game */
  readonly at: number;
  readonly free: number;
  /** by group that holds fewer than the window has free */
  readonly freeOfGroup: Readonly<Record<string, number>>;
}

export interface OpenGame {
  readonly game: PlanGame;
  /** windows with a free place, in the order of the night */
  readonly windows: readonly OpenWindow[];
}

/** A game at which reads of a slot can be, with those that are there. */
export interface SlotGame {
  readonly at: number;
  /** reads that stay there */
  readonly fixed: number;
  /** reads that are there and may move */
  readonly loose: number;
  /** more than these cannot be added; infinite without a limit */
  readonly room: number;
  /** a read there was promised aloud */
  readonly isAloud: boolean;
}

/** What a slot still asks for, beside the reads that stay. */
export interface OpenSlot {
  readonly promise: PlanPromise;
  readonly slot: number;
  /** reads to place; those that may move are among them */
  readonly reads: number;
  /** unlocked games with a free place in a window of the promise, or with a read that stays; in the order of play */
  readonly games: readonly SlotGame[];
}

export interface OpenSeason {
  readonly games: readonly OpenGame[];
  readonly slots: readonly OpenSlot[];
  /** reads of named promises that stay, whether or not their game is to be played */
  readonly fixed: readonly PlacedRead[];
  /** reads of named promises that may move */
  readonly loose: readonly PlacedRead[];
  /** by `game window`: place numbers that are taken */
  readonly taken: ReadonlyMap<string, ReadonlySet<number>>;
  /** by `kind game`: reads that may be added, where more sponsors compete than it holds */
  readonly kindRoom: ReadonlyMap<string, number>;
}

export const keyOf = (...parts: readonly (string | number)[]): string => parts.join('\u0000');

/** Whether reads of a promise may stand in a window. */
export const isOf = (window: { readonly key: string; readonly kind: string }, promise: PlanPromise): boolean =>
  promise.windows.includes(window.key) || promise.windows.includes(window.kind);

/** Free places of a window for one group of read kinds. */
export const freeFor = (window: OpenWindow, group: string | null): number => (group === null ? window.free : (window.freeOfGroup[group] ?? window.free));

const before = (one: string, other: string): number => (one < other ? -1 : one > other ? 1 : 0);
const inOrder = (one: PlacedRead, other: PlacedRead): number =>
  before(one.promiseId, other.promiseId) || before(one.gameId, other.gameId) || before(one.windowKey, other.windowKey) || one.place - other.place;

/** What is left to plan when the reads that stay have been taken out of demand and places. Promises by id. */
export function openSeason(season: PlanSeason): OpenSeason {
  const promises = season.promises.toSorted((one, other) => before(one.promiseId, other.promiseId));
  const named = new Map(promises.map((promise) => [promise.promiseId, promise]));
  const locked = new Set(season.games.filter((game) => game.isLocked).map((game) => game.gameId));
  const placed = season.placed.toSorted(inOrder);
  const stays = placed.filter((read) => read.isFixed || locked.has(read.gameId) || !named.has(read.promiseId));
  const fixed = stays.filter((read) => named.has(read.promiseId));
  const loose = placed.filter((read) => named.has(read.promiseId) && !read.isFixed && !locked.has(read.gameId));
  const games = season.games.map((game) => openGame(game, stays, named));
  const [fixedAt, looseAt] = [countAt(fixed), countAt(loose)];
  const slots = promises.flatMap((promise) => openSlots(promise, season, games, fixedAt, looseAt));
  return { games, slots, fixed, loose, taken: takenPlaces(stays), kindRoom: kindRoom(games, slots, fixed, named) };
}

function openGame(game: PlanGame, stays: readonly PlacedRead[], named: ReadonlyMap<string, PlanPromise>): OpenGame {
  if (game.isLocked) return { game, windows: [] };
  const here = stays.filter((read) => read.gameId === game.gameId);
  const windows = game.windows.map((window, at): OpenWindow => {
    const inside = here.filter((read) => read.windowKey === window.key);
    const free = Math.max(0, window.places - inside.length);
    const groups = Object.entries(window.groupPlaces).map(([group, places]): [string, number] => {
      const ofGroup = inside.filter((read) => named.get(read.promiseId)?.placeGroup === group).length;
      return [group, Math.max(0, places - ofGroup)];
    });
    return { key: window.key, kind: window.kind, at, free, freeOfGroup: Object.fromEntries(groups.filter(([, places]) => places < free)) };
  });
  return { game, windows: windows.filter((window) => window.free > 0) };
}

/** Reads by `promise game`. */
function countAt(reads: readonly PlacedRead[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const { promiseId, gameId } of reads) counts.set(keyOf(promiseId, gameId), (counts.get(keyOf(promiseId, gameId)) ?? 0) + 1);
  return counts;
}

/** Reads that are placed count in the first slot that has their game and asks for more. */
function openSlots(promise: PlanPromise, season: PlanSeason, games: readonly OpenGame[], fixedAt: ReadonlyMap<string, number>, looseAt: ReadonlyMap<string, number>): OpenSlot[] {
  const seated = new Map<string, number>();
  return promise.slots.map((slot, index) => {
    const wanted = new Set(slot.gameIds);
    let reads = slot.reads;
    const slotGames: SlotGame[] = [];
    season.games.forEach((game, at) => {
      if (!wanted.has(game.gameId)) return;
      const key = keyOf(promise.promiseId, game.gameId);
      const fixed = Math.min(reads, (fixedAt.get(key) ?? 0) - (seated.get(key) ?? 0));
      if (fixed > 0) seated.set(key, (seated.get(key) ?? 0) + fixed);
      reads -= fixed;
      const hasPlace = games[at]!.windows.some((window) => isOf(window, promise) && freeFor(window, promise.placeGroup) > 0);
      if (game.isLocked || (!hasPlace && fixed === 0)) return;
      const room = hasPlace ? Math.max(0, (promise.mostPerGame ?? Infinity) - (fixedAt.get(key) ?? 0)) : 0;
      slotGames.push({ at, fixed, loose: looseAt.get(key) ?? 0, room, isAloud: promise.pinnedGameIds.includes(game.gameId) });
    });
    return { promise, slot: index, reads, games: slotGames };
  });
}

function takenPlaces(stays: readonly PlacedRead[]): Map<string, Set<number>> {
  const taken = new Map<string, Set<number>>();
  for (const { gameId, windowKey, place } of stays) {
    const key = keyOf(gameId, windowKey);
    taken.set(key, (taken.get(key) ?? new Set()).add(place));
  }
  return taken;
}

function kindRoom(games: readonly OpenGame[], slots: readonly OpenSlot[], fixed: readonly PlacedRead[], named: ReadonlyMap<string, PlanPromise>): Map<string, number> {
  const kinds = new Map<string, { sponsors: Set<string>; limit: number; reads: number }>();
  const note = (promise: PlanPromise, gameId: string, reads: number): void => {
    const key = keyOf(promise.readKindId, gameId);
    const kind = kinds.get(key) ?? { sponsors: new Set(), limit: Infinity, reads: 0 };
    kind.sponsors.add(promise.sponsorId);
    kinds.set(key, { sponsors: kind.sponsors, limit: Math.min(kind.limit, promise.sponsorsPerGame), reads: kind.reads + reads });
  };
  for (const read of fixed) note(named.get(read.promiseId)!, read.gameId, 1);
  for (const { promise, reads, games: own } of slots) {
    if (reads > 0) for (const { at, room } of own) if (room > 0) note(promise, games[at]!.game.gameId, 0);
  }
  return new Map([...kinds].filter(([, kind]) => kind.sponsors.size > kind.limit).map(([key, kind]) => [key, Math.max(0, kind.limit - kind.reads)]));
}
