import type { Day } from '../day.ts';
import type { PlanWindow } from '../planning/season.ts';

/** A game of ours with its places. */
export interface InventoryGame {
  readonly gameId: string;
  readonly playedOn: Day;
  /** played, or its day is over: what stands empty there went unused */
  readonly isOver: boolean;
  readonly windows: readonly PlanWindow[];
}

/** Reads in one window of one game: given (counted), sold (a signed promise has its place there) or held for an open offer. */
export interface InventoryReads {
  readonly gameId: string;
  readonly windowKey: string;
  readonly readKindId: string;
  readonly what: 'given' | 'sold' | 'held';
  readonly reads: number;
}

export interface InventoryKind {
  readonly readKindId: string;
  readonly placeGroup: string | null;
  /** windows by kind or key */
  readonly windows: readonly string[];
}

/** Places and what became of them, in reads. Sums of `given`, `sold` and `held` are of the kind alone, places are shared with other kinds. */
export interface Places {
  readonly games: number;
  readonly places: number;
  readonly given: number;
  readonly sold: number;
  readonly held: number;
  /** free in games to come */
  readonly left: number;
  /** empty in games that are over */
  readonly unused: number;
}

export interface PlacesOfMonth extends Places {
  /** `2027-01` */
  readonly month: string;
  /** null for all kinds together, each place counted once */
  readonly readKindId: string | null;
}

function placesOf(games: readonly InventoryGame[], readsIn: ReadonlyMap<string, readonly InventoryReads[]>, kind: InventoryKind | null): Places {
  const sum = { games: games.length, places: 0, given: 0, sold: 0, held: 0, left: 0, unused: 0 };
  for (const { gameId, isOver, windows } of games) {
    for (const window of windows) {
      if (kind !== null && !kind.windows.includes(window.key) && !kind.windows.includes(window.kind)) continue;
      const there = readsIn.get(`${gameId} ${window.key}`) ?? [];
      const own = kind === null ? there : there.filter((read) => read.readKindId === kind.readKindId);
      for (const { what, reads } of own) sum[what] += reads;
      const places = kind?.placeGroup ? Math.min(window.places, window.groupPlaces[kind.placeGroup] ?? window.places) : window.places;
      const free = Math.max(0, places - there.reduce((all, { reads }) => all + reads, 0));
      sum.places += places;
      sum[isOver ? 'unused' : 'left'] += free;
    }
  }
  return sum;
}

/**
 * The places of a season by month: what was given, what is sold, what is held by offers, what is left, and what went unused.
 * First all kinds together, then each kind in the windows it may be read in; those windows are shared, so what is left of one
 * kind is no longer left once another is sold.
 *
 * @source common practice, no source
 */
export function inventoryOf(games: readonly InventoryGame[], reads: readonly InventoryReads[], kinds: readonly InventoryKind[]): PlacesOfMonth[] {
  const readsIn = new Map<string, InventoryReads[]>();
  for (const read of reads) {
    const key = `${read.gameId} ${read.windowKey}`;
    const there = readsIn.get(key);
    if (there) there.push(read);
    else readsIn.set(key, [read]);
  }
  const months = [...new Set(games.map((game) => game.playedOn.slice(0, 7)))].toSorted();
  return months.flatMap((month) => {
    const own = games.filter((game) => game.playedOn.startsWith(month));
    return [null, ...kinds].map((kind) => ({ month, readKindId: kind?.readKindId ?? null, ...placesOf(own, readsIn, kind) }));
  });
}
