import type { CompanySeason } from './company-season.ts';
import { grouped } from './grouped.ts';
import type { ModelRows } from './model-rows.ts';
import type { Presence } from './presence.ts';
import { strictnessOf } from './rivals.ts';

const promiseOf = (of: CompanySeason, cell: number) => of.season.promises[of.cells[cell]!.promise]!;
const cellsOfGame = (of: CompanySeason, game: number): number[] => of.sitesOfGame[game]!.flatMap((site) => of.cellsOfSite[site]!);

/** A kind is held by so many different sponsors in a game. */
export function addSponsorsPerGame(of: CompanySeason, rows: ModelRows, presence: Presence): void {
  of.season.games.forEach((_, game) => {
    for (const cells of grouped(cellsOfGame(of, game), (cell) => promiseOf(of, cell).readKindId).values()) {
      const bySponsor = grouped(cells, (cell) => promiseOf(of, cell).sponsorId);
      const limit = Math.min(...cells.map((cell) => promiseOf(of, cell).sponsorsPerGame));
      if (bySponsor.size > limit) rows.atMost(limit, [...bySponsor.values()].map((own) => [presence.in(own), 1]));
    }
  });
}

/** Sponsors of one category keep apart in each game as the stricter of two asks. */
export function addRivals(of: CompanySeason, rows: ModelRows, presence: Presence): void {
  of.season.games.forEach((_, game) => {
    const byCategory = grouped(cellsOfGame(of, game).filter((cell) => promiseOf(of, cell).categoryId !== ''), (cell) => promiseOf(of, cell).categoryId);
    for (const cells of byCategory.values()) {
      if (new Set(cells.map((cell) => promiseOf(of, cell).sponsorId)).size < 2) continue;
      const asked = (strictness: number): boolean => cells.some((cell) => strictnessOf(promiseOf(of, cell).separation) >= strictness);
      const apart = new Apart(of, rows, presence);
      const bySite = grouped(cells, (cell) => of.cells[cell]!.site);
      if (asked(1)) for (const here of bySite.values()) apart.add(here, here, 1);
      if (asked(2)) for (const [here, next] of neighbors(of, bySite)) apart.both(here, next, 2);
      if (asked(3)) apart.add(cells, cells, 3);
    }
  });
}

function neighbors(of: CompanySeason, bySite: ReadonlyMap<number, number[]>): (readonly [number[], number[]])[] {
  return [...bySite].flatMap(([site, here]) => {
    // Sites of a game are numbered in the order of the night.
    const next = of.sites[site + 1]?.game === of.sites[site]!.game ? bySite.get(site + 1) : undefined;
    return next === undefined ? [] : [[here, next] as const];
  });
}

class Apart {
  constructor(private readonly of: CompanySeason, private readonly rows: ModelRows, private readonly presence: Presence) {}

  both(here: readonly number[], there: readonly number[], strictness: number): void {
    this.add(here, there, strictness);
    this.add(there, here, strictness);
  }

  /**
   * One sponsor with any read here, and every other with a read there that asks for so much: one of them at most. The others
   * exclude each other there by themselves, so the row says no more than is so.
   */
  add(here: readonly number[], there: readonly number[], strictness: number): void {
    const strict = this.bySponsor(there.filter((cell) => strictnessOf(promiseOf(this.of, cell).separation) >= strictness));
    for (const [sponsorId, any] of this.bySponsor(here)) {
      const others = [...strict].filter(([other]) => other !== sponsorId).map(([, cells]) => this.presence.in(cells));
      if (others.length > 0) this.rows.atMost(1, [this.presence.in(any), ...others].map((column) => [column, 1]));
    }
  }

  private bySponsor(cells: readonly number[]): Map<string, number[]> {
    return grouped(cells, (cell) => promiseOf(this.of, cell).sponsorId);
  }
}
