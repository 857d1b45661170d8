import { WEIGHT_OF_PRIORITY } from '../season.ts';
import type { PlanRead, PlanWishes } from '../season.ts';
import { CompanyRoom } from './company-room.ts';
import { freeReads } from './company-reads.ts';
import { whereOf } from './company-season.ts';
import type { CompanySeason } from './company-season.ts';
import { exchangeReads } from './exchanged-reads.ts';
import { refillGames } from './refilled-games.ts';

/**
 * The reads of a plan in places that also keep the seconds and the company, and others instead of those that do not: what
 * matters most is put first, and what a plan to keep has already.
 *
 * @returns reads by cell
 */
export function repairedCounts(of: CompanySeason, reads: readonly PlanRead[]): Int32Array {
  const room = new CompanyRoom(of);
  const wanted = wantedCells(of, reads);
  for (const cells of wanted) {
    const index = cells.find((one) => room.hasRoom(one));
    if (index !== undefined) room.put(index, 1);
  }
  const slots = byWeight(of);
  for (const [promise, slot] of slots) {
    while (room.lacking(promise, slot) > 0) {
      const index = quietestCell(of, room, promise, slot);
      if (index === null) break;
      room.put(index, 1);
    }
  }
  return room.counts;
}

/** The same with a smaller shortfall, where exchanging reads or filling games anew finds one. What is to be kept is only exchanged. */
export function improvedCounts(of: CompanySeason, counts: Int32Array, wishes: PlanWishes, bound: number): Int32Array {
  const room = new CompanyRoom(of);
  counts.forEach((count, cell) => room.put(cell, count - room.counts[cell]!));
  const slots = byWeight(of);
  exchangeReads(of, room, slots);
  if (wishes.keeps === 'nothing') refillGames(of, room, slots, bound);
  return room.counts;
}

/** For each read that does not stay, its cells; the heaviest first, among them those that lie there already. */
function wantedCells(of: CompanySeason, reads: readonly PlanRead[]): (readonly number[])[] {
  const weightOf = (promise: number): number => WEIGHT_OF_PRIORITY[of.season.promises[promise]!.priority];
  const wanted = freeReads(of, reads).map(({ promise, site, cells }) => ({ cells, weight: weightOf(promise), lay: of.before.has(whereOf(promise, site)) ? 1 : 0 }));
  return wanted.toSorted((one, other) => other.weight - one.weight || other.lay - one.lay).map((one) => one.cells);
}

function byWeight(of: CompanySeason): (readonly [promise: number, slot: number])[] {
  const slots = of.season.promises.flatMap((promise, index) => promise.slots.map((_, slot) => [index, slot] as const));
  return slots.toSorted(([one], [other]) => of.season.promises[one]!.priority - of.season.promises[other]!.priority);
}

/** Where one more read of the promise fits: in the game that has fewest of it, then in the window it likes best. */
function quietestCell(of: CompanySeason, room: CompanyRoom, promise: number, slot: number): number | null {
  let best: number | null = null;
  let bestCost = Infinity;
  for (const index of of.cellsOfPromise[promise]!) {
    const cell = of.cells[index]!;
    if (cell.slot !== slot) continue;
    const cost = room.readsInGame(promise, of.sites[cell.site]!.game) * 100 + cell.rank + room.counts[index]!;
    if (cost < bestCost && room.hasRoom(index)) [best, bestCost] = [index, cost];
  }
  return best;
}
