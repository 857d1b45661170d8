import { WEIGHT_OF_PRIORITY } from '../season.ts';
import type { PlanWishes } from '../season.ts';
import type { CompanySeason } from './company-season.ts';
import { addEvenness } from './evenness.ts';
import { grouped } from './grouped.ts';
import { ModelRows, sumOf } from './model-rows.ts';
import type { CompanyModel, Term } from './model-rows.ts';
import { Presence } from './presence.ts';
import { addRivals, addSponsorsPerGame } from './separation-rows.ts';
import { addStillness } from './stillness.ts';

/** Entries of the matrix above which a season is too large to be solved with company in the time of a person who waits. */
export const MOST_ENTRIES = 400_000;

/** Entries a season's matrix has at least, told before it is built: each cell stands in its slot, its window, its game and beside its rivals. */
export const entriesOf = (of: CompanySeason): number => of.cells.length * 6;

/**
 * A season with seconds and company as a program in whole numbers: one column for the reads of a promise in a window, unmerged,
 * so that a solution is a plan and nothing has to be made of it. Common practice, no source.
 */
export function companyModel(of: CompanySeason, wishes: PlanWishes): CompanyModel {
  const rows = new ModelRows();
  for (const cell of of.cells) rows.column({ lower: cell.staying, upper: cell.most, isWhole: true, derived: null });
  addSlots(of, rows);
  addWindows(of, rows);
  addMostPerGame(of, rows);
  const presence = new Presence(of, rows);
  addSponsorsPerGame(of, rows, presence);
  addRivals(of, rows, presence);
  addStillness(of, wishes, rows);
  addEvenness(of, rows);
  return rows.finish();
}

const ones = (columns: readonly number[]): Term[] => columns.map((column) => [column, 1]);

/** Reads of a slot and what it lacks make what is promised; what it lacks costs by priority. */
function addSlots(of: CompanySeason, rows: ModelRows): void {
  of.season.promises.forEach((promise, index) => {
    const own = of.cellsOfPromise[index]!;
    promise.slots.forEach((slot, at) => {
      const cells = own.filter((cell) => of.cells[cell]!.slot === at);
      const reads = Math.max(slot.reads, cells.reduce((sum, cell) => sum + of.cells[cell]!.staying, 0));
      const lacking = rows.column({ lower: 0, upper: slot.reads, isWhole: true, derived: (values) => Math.max(0, reads - sumOf(values, cells)) });
      rows.cost('shortfall', lacking, WEIGHT_OF_PRIORITY[promise.priority]);
      rows.row(reads, reads, [...ones(cells), [lacking, 1]]);
    });
  });
}

function addWindows(of: CompanySeason, rows: ModelRows): void {
  of.sites.forEach((site, index) => {
    const cells = of.cellsOfSite[index]!;
    const promiseOf = (cell: number) => of.season.promises[of.cells[cell]!.promise]!;
    rows.atMost(site.places, ones(cells));
    for (const [group, places] of Object.entries(site.groupPlaces)) rows.atMost(places, ones(cells.filter((cell) => promiseOf(cell).placeGroup === group)));
    if (site.seconds === Infinity) return;
    const secondsOf = (cell: number): number => promiseOf(cell).seconds;
    rows.atMost(site.seconds, cells.filter((cell) => secondsOf(cell) > 0).map((cell) => [cell, secondsOf(cell)]));
    // Of reads at least so long a window holds so many: said apart, the relaxation is much closer.
    for (const length of new Set(cells.map(secondsOf))) {
      const reads = length > 0 ? Math.floor(site.seconds / length) : Infinity;
      if (reads < site.places) rows.atMost(reads, ones(cells.filter((cell) => secondsOf(cell) >= length)));
    }
  });
}

function addMostPerGame(of: CompanySeason, rows: ModelRows): void {
  of.season.promises.forEach(({ mostPerGame }, index) => {
    if (mostPerGame === null) return;
    const byGame = grouped(of.cellsOfPromise[index]!, (cell) => of.sites[of.cells[cell]!.site]!.game);
    for (const cells of byGame.values()) rows.atMost(mostPerGame, ones(cells));
  });
}
