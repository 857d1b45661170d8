import type { CompanySeason } from './company-season.ts';
import { grouped } from './grouped.ts';
import { sumOf } from './model-rows.ts';
import type { ModelRows, Term } from './model-rows.ts';

/** Columns that are 1 where there is any read in some cells. Asked twice for the same cells, they answer the same column. */
export class Presence {
  private readonly known = new Map<string, number>();

  constructor(private readonly of: CompanySeason, private readonly rows: ModelRows) {}

  in(cells: readonly number[]): number {
    const [only] = cells;
    if (cells.length === 1 && this.of.cells[only!]!.most === 1) return only!;
    const key = cells.join();
    const found = this.known.get(key);
    if (found !== undefined) return found;
    const stays = cells.some((cell) => this.of.cells[cell]!.staying > 0);
    const column = this.rows.column({ lower: stays ? 1 : 0, upper: 1, isWhole: true, derived: (values) => (sumOf(values, cells) > 0 ? 1 : 0) });
    for (const cell of cells) this.rows.atMost(0, [[cell, 1], [column, -this.of.cells[cell]!.most]]);
    this.tighten(cells, column);
    this.known.set(key, column);
    return column;
  }

  /** What a promise may have in the game and what a window holds, said of the presence too: the relaxation is much closer. */
  private tighten(cells: readonly number[], column: number): void {
    const { cells: all, sites, season } = this.of;
    const together = (own: readonly number[], most: number): void => {
      if (own.length > 1 && most < own.reduce((sum, cell) => sum + all[cell]!.most, 0)) this.rows.atMost(0, [...own.map((cell): Term => [cell, 1]), [column, -most]]);
    };
    for (const [promise, own] of grouped(cells, (cell) => all[cell]!.promise)) {
      const { mostPerGame, slots } = season.promises[promise]!;
      const asked = slots.reduce((sum, slot) => sum + slot.reads, 0);
      const stays = own.reduce((sum, cell) => sum + all[cell]!.staying, 0);
      together(own, Math.max(stays, Math.min(mostPerGame ?? Infinity, asked)));
    }
    for (const [site, own] of grouped(cells, (cell) => all[cell]!.site)) {
      const shortest = Math.min(...own.map((cell) => season.promises[all[cell]!.promise]!.seconds));
      const stays = own.reduce((sum, cell) => sum + all[cell]!.staying, 0);
      together(own, Math.max(stays, Math.min(sites[site]!.places, shortest > 0 ? Math.floor(sites[site]!.seconds / shortest) : Infinity)));
    }
  }
}
