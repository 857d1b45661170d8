import type { PlanWishes } from '../season.ts';
import { whereOf } from './company-season.ts';
import type { CompanySeason } from './company-season.ts';
import { grouped } from './grouped.ts';
import { sumOf } from './model-rows.ts';
import type { ModelRows, Term } from './model-rows.ts';

/**
 * What comes after the shortfall: first a read in every game for which one was promised aloud, then, where the plan keeps what
 * is placed, the fewest reads that change their game, then the fewest that change their window.
 */
export function addStillness(of: CompanySeason, wishes: PlanWishes, rows: ModelRows): void {
  const reads = wishes.keeps === 'nothing' ? 0 : [...of.before.values()].reduce((sum, one) => sum + one, 0);
  of.season.promises.forEach((promise, index) => {
    const byGame = grouped(of.cellsOfPromise[index]!, (cell) => of.sites[of.cells[cell]!.site]!.game);
    for (const [game, cells] of byGame) {
      if (promise.pinnedGameIds.includes(of.season.games[game]!.gameId)) addPinned(rows, cells, (reads + 1) ** 2);
      if (reads > 0) addKept(of, rows, index, cells, reads + 1);
    }
  });
}

function addPinned(rows: ModelRows, cells: readonly number[], cost: number): void {
  const bare = rows.column({ lower: 0, upper: 1, isWhole: true, derived: (values) => (sumOf(values, cells) > 0 ? 0 : 1) });
  rows.row(1, Infinity, [[bare, 1], ...cells.map((cell): Term => [cell, 1])]);
  rows.cost('stillness', bare, cost);
}

/** Reads of a promise that keep their game, and those that keep their window too. */
function addKept(of: CompanySeason, rows: ModelRows, promise: number, cells: readonly number[], gameCost: number): void {
  const bySite = grouped(cells, (cell) => of.cells[cell]!.site);
  const lay = (site: number): number => of.before.get(whereOf(promise, site)) ?? 0;
  const { game } = of.sites[of.cells[cells[0]!]!.site]!;
  const inGame = of.sitesOfGame[game]!.reduce((sum, site) => sum + lay(site), 0);
  if (inGame === 0) return;
  addKeptIn(rows, cells, inGame, gameCost);
  for (const [site, own] of bySite) if (lay(site) > 0) addKeptIn(rows, own, lay(site), 1);
}

function addKeptIn(rows: ModelRows, cells: readonly number[], before: number, gain: number): void {
  const kept = rows.column({ lower: 0, upper: before, isWhole: true, derived: (values) => Math.min(before, sumOf(values, cells)) });
  rows.row(-Infinity, 0, [[kept, 1], ...cells.map((cell): Term => [cell, -1])]);
  rows.cost('stillness', kept, -gain);
}
