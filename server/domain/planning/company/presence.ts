import type { CompanySeason } from './company-season.ts';
import { sumOf } from './model-rows.ts';
import type { ModelRows } from './model-rows.ts';

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
    this.known.set(key, column);
    return column;
  }
}
