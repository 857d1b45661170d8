import type { SplitRooms } from './game-nodes.ts';

/** What the search asks of a solved season. */
export interface Divided {
  readonly weightedShortfall: number;
  /** by `kind game`: rooms that the flow gave to windows their promises may not go to, divided as they can be used */
  readonly undecided: ReadonlyMap<string, ReadonlyMap<string, number>>;
}

/** Solutions looked at before the search gives up its proof. */
const MOST_SOLUTIONS = 60;

/**
 * Where a kind holds fewer sponsors than compete for it, and its promises may go to different windows, one room for all is a
 * little too generous: it cannot tell whose read comes through. Then the room is divided among the windows, in every way that
 * may still be better than the best plan found (branch and bound). Nearly always the first solution has nothing to divide.
 *
 * @returns the best solution, and what no plan can go below
 */
export function divideKinds<Solution extends Divided>(solve: (splits: SplitRooms) => Solution, roomOf: (kind: string) => number): { readonly best: Solution; readonly bound: number } {
  const first = solve(new Map());
  if (first.undecided.size === 0) return { best: first, bound: first.weightedShortfall };
  let looked = 1;
  let best = usable(first, solve, () => (looked += 1));
  const open: { readonly splits: SplitRooms; readonly solution: Solution }[] = [{ splits: new Map(), solution: first }];
  while (open.length > 0 && looked < MOST_SOLUTIONS) {
    open.sort((one, other) => one.solution.weightedShortfall - other.solution.weightedShortfall);
    const { splits, solution } = open.shift()!;
    if (solution.weightedShortfall >= best.weightedShortfall) return { best, bound: best.weightedShortfall };
    const [kind, rooms] = solution.undecided.entries().next().value!;
    for (const shares of waysToDivide(roomOf(kind), [...rooms.keys()])) {
      const next = new Map(splits).set(kind, shares);
      const found = solve(next);
      looked += 1;
      if (found.weightedShortfall >= best.weightedShortfall) continue;
      if (found.undecided.size === 0) best = found;
      else open.push({ splits: next, solution: found });
    }
  }
  return { best, bound: Math.min(best.weightedShortfall, ...open.map((one) => one.solution.weightedShortfall)) };
}

/** A plan that can be carried out: what is undecided is divided as it could be used, until nothing is. */
function usable<Solution extends Divided>(first: Solution, solve: (splits: SplitRooms) => Solution, count: () => void): Solution {
  const splits = new Map<string, ReadonlyMap<string, number>>();
  let solution = first;
  while (solution.undecided.size > 0) {
    for (const [kind, rooms] of solution.undecided) splits.set(kind, rooms);
    solution = solve(splits);
    count();
  }
  return solution;
}

function waysToDivide(room: number, among: readonly string[]): ReadonlyMap<string, number>[] {
  const [first, ...rest] = among;
  if (first === undefined) return [new Map()];
  if (rest.length === 0) return [new Map([[first, room]])];
  return Array.from({ length: room + 1 }, (_, share) => share).flatMap((share) => waysToDivide(room - share, rest).map((others) => new Map([[first, share], ...others])));
}
