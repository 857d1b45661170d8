import { FlowNetwork, UNLIMITED } from '../flow/flow-network.ts';
import { minCostFlow } from '../flow/min-cost-flow.ts';
import type { PlacedRead, PlanPromise } from '../season.ts';
import { freeFor, isOf, keyOf } from './open-season.ts';
import type { OpenGame } from './open-season.ts';

/** So many reads of a promise at one game. */
export interface GameReads {
  readonly promise: PlanPromise;
  readonly reads: number;
}

export interface WindowReads extends GameReads {
  readonly windowKey: string;
}

/**
 * Divides the reads of a game among its windows: as many as possible find a place, keep the window where they are, stand
 * in the window their kind prefers, and share windows of one kind evenly, in that order.
 *
 * @param loose reads that are there now and may move
 */
export function windowsOfGame(game: OpenGame, here: readonly GameReads[], loose: readonly PlacedRead[]): WindowReads[] {
  const before = new Map<string, number>();
  for (const { promiseId, windowKey } of loose) before.set(keyOf(promiseId, windowKey), (before.get(keyOf(promiseId, windowKey)) ?? 0) + 1);
  const all = here.reduce((sum, one) => sum + one.reads, 0);
  const network = new FlowNetwork(4);
  const sink = network.addNode(-all);
  const inner = game.windows.map((window) => {
    const node = network.addNode();
    for (let nth = 0; nth < Math.min(window.free, all); nth += 1) {
      const arc = network.addArc(node, sink, 1, 0, 0, 0, nth);
      if (nth === 0) network.startBy(arc);
    }
    const groups = Object.entries(window.freeOfGroup).filter(([, free]) => free > 0).map(([group, free]): [string, number] => {
      const door = network.addNode();
      network.startBy(network.addArc(door, node, free));
      return [group, door];
    });
    return { node, groups: new Map(groups) };
  });
  const arcs: { readonly arc: number; readonly reads: GameReads; readonly windowKey: string }[] = [];
  for (const one of here) {
    const { promise, reads } = one;
    const node = network.addNode(reads);
    network.startBy(network.addArc(node, sink, UNLIMITED, 1));
    game.windows.forEach((window, at) => {
      if (!isOf(window, promise) || freeFor(window, promise.placeGroup) === 0) return;
      const { node: own, groups } = inner[at]!;
      const to = (promise.placeGroup === null ? undefined : groups.get(promise.placeGroup)) ?? own;
      const rank = promise.windows.findIndex((name) => name === window.key || name === window.kind);
      const kept = before.get(keyOf(promise.promiseId, window.key)) ?? 0;
      if (kept > 0) arcs.push({ arc: network.addArc(node, to, kept, 0, -1, rank), reads: one, windowKey: window.key });
      if (kept < reads) arcs.push({ arc: network.addArc(node, to, UNLIMITED, 0, 0, rank), reads: one, windowKey: window.key });
    });
  }
  const { flow } = minCostFlow(network);
  const counts = new Map<string, WindowReads>();
  for (const { arc, reads: { promise }, windowKey } of arcs) {
    if (flow[arc]! === 0) continue;
    const key = keyOf(promise.promiseId, windowKey);
    counts.set(key, { promise, windowKey, reads: (counts.get(key)?.reads ?? 0) + flow[arc]! });
  }
  return [...counts.values()];
}
