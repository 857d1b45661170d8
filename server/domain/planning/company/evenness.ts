import type { CompanySeason } from './company-season.ts';
import { grouped } from './grouped.ts';
import { sumOf } from './model-rows.ts';
import type { ModelRows, Term } from './model-rows.ts';

/** Looks at the pace so often through the season. */
const CHECKPOINTS = 5;
/** What one read too many, too early or in the wrong place costs, against each other. Common practice, no source. */
const COST = { pace: 4, floor: 8, crowdedGame: 3, crowdedWindow: 3, lessLikedWindow: 0.25 } as const;

const ones = (columns: readonly number[]): Term[] => columns.map((column) => [column, 1]);

/** What comes last: the pace through the season, balance and floors of games, a sponsor's reads over different windows. */
export function addEvenness(of: CompanySeason, rows: ModelRows): void {
  of.season.promises.forEach((promise, index) => {
    const own = of.cellsOfPromise[index]!;
    promise.slots.forEach((slot, at) => {
      const byGame = [...grouped(own.filter((cell) => of.cells[cell]!.slot === at), (cell) => of.sites[of.cells[cell]!.site]!.game)];
      if (byGame.length > 1) addPace(rows, byGame.toSorted(([one], [other]) => one - other).map(([, cells]) => cells), slot.reads);
    });
    for (const cell of own) if (of.cells[cell]!.rank > 0) rows.cost('evenness', cell, COST.lessLikedWindow * of.cells[cell]!.rank);
    if (promise.leastPerGame > 0) for (const cells of grouped(own, (cell) => of.sites[of.cells[cell]!.site]!.game).values()) addFloor(rows, cells, promise.leastPerGame);
  });
  addCrowdedWindows(of, rows);
}

function addPace(rows: ModelRows, games: readonly (readonly number[])[], reads: number): void {
  const fair = Math.ceil(reads / games.length);
  for (const cells of games) addAbove(rows, cells, fair, COST.crowdedGame);
  for (let point = 1; point < CHECKPOINTS; point += 1) {
    const until = Math.round((games.length * point) / CHECKPOINTS);
    const cells = games.slice(0, until).flat();
    if (until === 0 || until === games.length) continue;
    addAbove(rows, cells, Math.ceil((reads * until) / games.length), COST.pace);
    addBelow(rows, cells, Math.floor((reads * until) / games.length), COST.pace);
  }
}

const addFloor = (rows: ModelRows, cells: readonly number[], least: number): void => addBelow(rows, cells, least, COST.floor);

function addAbove(rows: ModelRows, cells: readonly number[], limit: number, cost: number): void {
  const above = rows.column({ lower: 0, upper: Infinity, isWhole: false, derived: (values) => Math.max(0, sumOf(values, cells) - limit) });
  rows.row(-Infinity, limit, [...ones(cells), [above, -1]]);
  rows.cost('evenness', above, cost);
}

function addBelow(rows: ModelRows, cells: readonly number[], limit: number, cost: number): void {
  if (limit === 0) return;
  const below = rows.column({ lower: 0, upper: Infinity, isWhole: false, derived: (values) => Math.max(0, limit - sumOf(values, cells)) });
  rows.row(limit, Infinity, [...ones(cells), [below, 1]]);
  rows.cost('evenness', below, cost);
}

/** Reads of one sponsor in one window beyond the first. */
function addCrowdedWindows(of: CompanySeason, rows: ModelRows): void {
  of.cellsOfSite.forEach((cells, site) => {
    if (of.sites[site]!.places < 2) return;
    const bySponsor = grouped(cells, (cell) => of.season.promises[of.cells[cell]!.promise]!.sponsorId);
    for (const own of bySponsor.values()) {
      const most = own.reduce((sum, cell) => sum + of.cells[cell]!.most, 0);
      if (most > 1) addAbove(rows, own, 1, COST.crowdedWindow);
    }
  });
}
