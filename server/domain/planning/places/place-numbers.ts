import type { PlacedRead, PlanRead } from '../season.ts';
import { keyOf } from './open-season.ts';
import type { WindowReads } from './windows-of-game.ts';

/**
 * Gives the reads of a game their places in its windows: from 1 on, without gaps beside the places that are taken.
 * A read that was in the window keeps its place where no gap comes of it; the rest follow by promise.
 *
 * @param loose reads that are at the game now and may move
 */
export function placeNumbers(gameId: string, reads: readonly WindowReads[], taken: ReadonlyMap<string, ReadonlySet<number>>, loose: readonly PlacedRead[]): PlanRead[] {
  const windows = [...new Set(reads.map((read) => read.windowKey))];
  return windows.flatMap((windowKey) => {
    const inside = reads.filter((read) => read.windowKey === windowKey);
    const wanted = new Map(inside.map((read) => [read.promise.promiseId, read.reads]));
    const places = freePlaces(taken.get(keyOf(gameId, windowKey)), inside.reduce((sum, read) => sum + read.reads, 0));
    const left = new Set(places);
    const stay = loose.filter((read) => {
      const wants = wanted.get(read.promiseId) ?? 0;
      if (read.windowKey !== windowKey || wants === 0 || !left.delete(read.place)) return false;
      wanted.set(read.promiseId, wants - 1);
      return true;
    });
    const open = [...left];
    const fresh = [...wanted].flatMap(([promiseId, count]) => Array.from({ length: count }, () => ({ promiseId, gameId, windowKey, place: open.shift()! })));
    return [...stay.map(({ promiseId, place }) => ({ promiseId, gameId, windowKey, place })), ...fresh];
  });
}

function freePlaces(taken: ReadonlySet<number> | undefined, count: number): number[] {
  const free: number[] = [];
  for (let place = 1; free.length < count; place += 1) if (!taken?.has(place)) free.push(place);
  return free;
}
