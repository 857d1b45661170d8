/** Stages of a solve, one after the other; each is frozen before the next. */
export const STAGES = ['shortfall', 'stillness', 'evenness'] as const;
export type Stage = (typeof STAGES)[number];

export type Term = readonly [column: number, coefficient: number];

/** Typed arrays as a solver takes them: rows in compressed form, costs by stage. */
export interface CompanyModel {
  readonly columns: number;
  readonly rows: number;
  readonly lower: Float64Array;
  readonly upper: Float64Array;
  /** 1 for a whole number */
  readonly isWhole: Int32Array;
  readonly rowLower: Float64Array;
  readonly rowUpper: Float64Array;
  readonly starts: Int32Array;
  readonly indices: Int32Array;
  readonly values: Float64Array;
  readonly costs: Readonly<Record<Stage, Float64Array>>;
  /** the row whose upper limit holds what an earlier stage reached */
  readonly freezeRow: Readonly<Record<'shortfall' | 'stillness', number>>;
  /** a stage that costs nothing is skipped */
  readonly hasStage: Readonly<Record<Stage, boolean>>;
  /** every column's value for reads by cell */
  readonly valuesOf: (counts: Int32Array) => Float64Array;
}

/** What a column stands for, worked out from those before it. */
export type Derived = (values: Float64Array) => number;

export interface Column {
  readonly lower: number;
  readonly upper: number;
  readonly isWhole: boolean;
  /** null for a cell's reads, which are told */
  readonly derived: Derived | null;
}

/** Collects columns and rows of a model. The first columns are the cells. */
export class ModelRows {
  readonly columns: Column[] = [];
  private readonly starts: number[] = [0];
  private readonly indices: number[] = [];
  private readonly values: number[] = [];
  private readonly rowLower: number[] = [];
  private readonly rowUpper: number[] = [];
  private readonly told = new Set<string>();
  private readonly costs: Readonly<Record<Stage, Map<number, number>>> = { shortfall: new Map(), stillness: new Map(), evenness: new Map() };

  column(column: Column): number {
    return this.columns.push(column) - 1;
  }

  cost(stage: Stage, column: number, cost: number): void {
    this.costs[stage].set(column, (this.costs[stage].get(column) ?? 0) + cost);
  }

  row(lower: number, upper: number, terms: readonly Term[]): void {
    for (const [column, coefficient] of terms) {
      this.indices.push(column);
      this.values.push(coefficient);
    }
    this.starts.push(this.indices.length);
    this.rowLower.push(lower);
    this.rowUpper.push(upper);
  }

  /** So many at most, or as many as are there and stay; the same said twice is one row, and what can never be reached is none. */
  atMost(limit: number, terms: readonly Term[]): void {
    const [least, most] = this.rangeOf(terms);
    if (most <= limit) return;
    const key = `${limit}:${terms.map((term) => term.join('*')).toSorted().join()}`;
    if (this.told.has(key)) return;
    this.told.add(key);
    this.row(-Infinity, Math.max(limit, least), terms);
  }

  private rangeOf(terms: readonly Term[]): readonly [least: number, most: number] {
    let [least, most] = [0, 0];
    for (const [column, coefficient] of terms) {
      const { lower, upper } = this.columns[column]!;
      least += coefficient * (coefficient > 0 ? lower : upper);
      most += coefficient * (coefficient > 0 ? upper : lower);
    }
    return [least, most];
  }

  finish(): CompanyModel {
    const freezeRow = { shortfall: this.freeze('shortfall'), stillness: this.freeze('stillness') };
    const { columns } = this;
    const costsOf = (stage: Stage): Float64Array => Float64Array.from(columns, (_, column) => this.costs[stage].get(column) ?? 0);
    return {
      columns: columns.length, rows: this.rowLower.length, freezeRow,
      lower: Float64Array.from(columns, (one) => one.lower), upper: Float64Array.from(columns, (one) => one.upper), isWhole: Int32Array.from(columns, (one) => Number(one.isWhole)),
      rowLower: Float64Array.from(this.rowLower), rowUpper: Float64Array.from(this.rowUpper),
      starts: Int32Array.from(this.starts), indices: Int32Array.from(this.indices), values: Float64Array.from(this.values),
      costs: { shortfall: costsOf('shortfall'), stillness: costsOf('stillness'), evenness: costsOf('evenness') },
      hasStage: { shortfall: true, stillness: this.costs.stillness.size > 0, evenness: this.costs.evenness.size > 0 },
      valuesOf: (counts) => {
        const values = new Float64Array(columns.length);
        columns.forEach(({ derived }, column) => {
          values[column] = derived === null ? counts[column]! : derived(values);
        });
        return values;
      },
    };
  }

  private freeze(stage: 'shortfall' | 'stillness'): number {
    this.row(-Infinity, Infinity, [...this.costs[stage]]);
    return this.rowLower.length - 1;
  }
}

export const sumOf = (values: Float64Array, columns: readonly number[]): number => columns.reduce((sum, column) => sum + values[column]!, 0);

/** What a stage costs with these values. */
export function costOf(model: CompanyModel, stage: Stage, values: Float64Array): number {
  const costs = model.costs[stage];
  let sum = 0;
  for (let column = 0; column < model.columns; column += 1) sum += costs[column]! * values[column]!;
  return sum;
}
