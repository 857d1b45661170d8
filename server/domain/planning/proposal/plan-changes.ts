import type { PlacedRead, PlanGame, PlanRead } from '../season.ts';

/** A read that gets another place, a first place, or none any more. */
export interface PlanChange {
  /** where it stands now; null where it has no place yet */
  readonly from: PlacedRead | null;
  /** where it will stand; null where it goes */
  readonly to: PlanRead | null;
}

const spotOf = (read: PlanRead): string => `${read.gameId} ${read.windowKey} ${read.place}`;

/** Pairs what is left over, the reads of each promise among themselves: in one window first, then in one game, then in the order of play. */
function paired(from: readonly PlacedRead[], to: readonly PlanRead[], alike: (read: PlanRead) => string): { pairs: PlanChange[]; from: PlacedRead[]; to: PlanRead[] } {
  const waiting = new Map<string, { reads: PlanRead[]; next: number }>();
  for (const read of to) {
    const key = alike(read);
    const queue = waiting.get(key);
    if (queue === undefined) waiting.set(key, { reads: [read], next: 0 });
    else queue.reads.push(read);
  }
  const pairs: PlanChange[] = [];
  const left: PlacedRead[] = [];
  for (const read of from) {
    const queue = waiting.get(alike(read));
    const match = queue?.reads[queue.next];
    if (queue === undefined || match === undefined) left.push(read);
    else {
      queue.next += 1;
      pairs.push({ from: read, to: match });
    }
  }
  return { pairs, from: left, to: [...waiting.values()].flatMap((queue) => queue.reads.slice(queue.next)) };
}

/**
 * What a plan changes: as many reads as possible stay in their place, then in their window, then at their game.
 *
 * @param placed where the reads of the promises planned stand now
 * @param reads where they will stand
 * @param games in the order of play
 * @returns one change for each read that does not stay in its very place
 */
export function planChanges(placed: readonly PlacedRead[], reads: readonly PlanRead[], games: readonly Pick<PlanGame, 'gameId'>[]): PlanChange[] {
  const order = new Map(games.map((game, place) => [game.gameId, place]));
  const inOrder = <Read extends PlanRead>(list: readonly Read[]): Read[] => list.toSorted((one, other) => (order.get(one.gameId) ?? 0) - (order.get(other.gameId) ?? 0));
  const stays = paired(inOrder(placed), inOrder(reads), (read) => `${read.promiseId} ${spotOf(read)}`);
  const inWindow = paired(stays.from, stays.to, (read) => `${read.promiseId} ${read.gameId} ${read.windowKey}`);
  const inGame = paired(inWindow.from, inWindow.to, (read) => `${read.promiseId} ${read.gameId}`);
  const elsewhere = paired(inOrder(inGame.from), inOrder(inGame.to), (read) => read.promiseId);
  return [
    ...inWindow.pairs,
    ...inGame.pairs,
    ...elsewhere.pairs,
    ...elsewhere.from.map((from) => ({ from, to: null })),
    ...elsewhere.to.map((to) => ({ from: null, to })),
  ];
}
