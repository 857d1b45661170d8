import type { PlanRead } from '../season.ts';
import { whereOf } from './company-season.ts';
import type { CompanySeason } from './company-season.ts';

/** A read that does not have to stay, and the cells it may be counted in. */
export interface FreeRead {
  readonly promise: number;
  readonly site: number;
  readonly cells: readonly number[];
}

/** The reads of a plan beside those that stay, by number. Reads that stand nowhere are left out. */
export function freeReads(of: CompanySeason, reads: readonly PlanRead[]): FreeRead[] {
  const { season, sites, cells } = of;
  const promiseAt = new Map(season.promises.map((promise, index) => [promise.promiseId, index]));
  const siteAt = new Map(sites.map((site, index) => [`${season.games[site.game]!.gameId} ${site.key}`, index]));
  const cellsAt = new Map<string, number[]>();
  const staying = new Map<string, number>();
  cells.forEach((cell, index) => {
    const where = whereOf(cell.promise, cell.site);
    cellsAt.set(where, [...(cellsAt.get(where) ?? []), index]);
    staying.set(where, (staying.get(where) ?? 0) + cell.staying);
  });
  return reads.flatMap((read) => {
    const promise = promiseAt.get(read.promiseId);
    const site = siteAt.get(`${read.gameId} ${read.windowKey}`);
    if (promise === undefined || site === undefined) return [];
    const where = whereOf(promise, site);
    const stays = staying.get(where) ?? 0;
    if (stays > 0) staying.set(where, stays - 1);
    return stays > 0 ? [] : [{ promise, site, cells: cellsAt.get(where) ?? [] }];
  });
}

/** Reads by cell, each in the first slot that still asks for one. */
export function countsOfReads(of: CompanySeason, reads: readonly PlanRead[]): Int32Array {
  const counts = Int32Array.from(of.cells, (cell) => cell.staying);
  const inSlot = new Map<string, number>();
  const slotOf = (cell: number): string => whereOf(of.cells[cell]!.promise, of.cells[cell]!.slot);
  of.cells.forEach((cell, index) => inSlot.set(slotOf(index), (inSlot.get(slotOf(index)) ?? 0) + cell.staying));
  for (const { cells } of freeReads(of, reads)) {
    const cell = cells.find((one) => of.cells[one]!.slot !== -1 && inSlot.get(slotOf(one))! < of.season.promises[of.cells[one]!.promise]!.slots[of.cells[one]!.slot]!.reads);
    if (cell === undefined) continue;
    counts[cell]! += 1;
    inSlot.set(slotOf(cell), inSlot.get(slotOf(cell))! + 1);
  }
  return counts;
}
