import type { PlanRead } from '../season.ts';
import { keyOf } from './open-season.ts';

/** By promise: reads that lie on another game than before, and those that only changed their window. What lost its place altogether has not moved. */
export function movesOf(before: readonly PlanRead[], after: readonly PlanRead[]): { readonly movedReads: number; readonly movedWithinGame: number } {
  const games = differences(before, after, ({ promiseId, gameId }) => keyOf(promiseId, gameId));
  const windows = differences(before, after, ({ promiseId, gameId, windowKey }) => keyOf(promiseId, gameId, windowKey));
  const total = (kept: Map<string, number>): number => [...kept.values()].reduce((sum, reads) => sum + reads, 0);
  const promises = new Set(before.map((read) => read.promiseId));
  let movedReads = 0;
  for (const promiseId of promises) {
    const left = games.lost.get(promiseId) ?? 0;
    movedReads += Math.min(left, games.come.get(promiseId) ?? 0);
  }
  return { movedReads, movedWithinGame: total(windows.lost) - total(games.lost) };
}

/** By promise: reads gone from where they were, and reads that are where none was. */
function differences(before: readonly PlanRead[], after: readonly PlanRead[], keyOfRead: (read: PlanRead) => string): { lost: Map<string, number>; come: Map<string, number> } {
  const change = new Map<string, { readonly promiseId: string; by: number }>();
  const count = (reads: readonly PlanRead[], by: number): void => {
    for (const read of reads) {
      const key = keyOfRead(read);
      const known = change.get(key) ?? { promiseId: read.promiseId, by: 0 };
      known.by += by;
      change.set(key, known);
    }
  };
  count(before, -1);
  count(after, 1);
  const lost = new Map<string, number>();
  const come = new Map<string, number>();
  for (const { promiseId, by } of change.values()) {
    const side = by < 0 ? lost : come;
    side.set(promiseId, (side.get(promiseId) ?? 0) + Math.abs(by));
  }
  return { lost, come };
}
