import loadHighs from 'highs';
import type { CompanyModel, Stage } from '../../domain/planning/company/model-rows.ts';

/** What earlier stages reached and later ones may not give up. */
export interface Frozen {
  readonly shortfall: number;
  readonly stillness: number;
}

export interface StageResult {
  /** whole numbers by column; null where nothing was found in time */
  readonly values: Float64Array | null;
  /** no solution costs less */
  readonly bound: number;
}

type Highs = Awaited<ReturnType<typeof loadHighs>>;
let loading: Promise<Highs> | null = null;

/** The solver, loaded once in its worker. */
export const highs = (): Promise<Highs> => (loading ??= loadHighs());

/** Proof of a whole number: less than one apart. Only the last stage may stop a little short of the best. */
const GAPS: Readonly<Record<Stage, { mip_rel_gap: number; mip_abs_gap: number }>> = {
  shortfall: { mip_rel_gap: 0, mip_abs_gap: 0.99 },
  stillness: { mip_rel_gap: 0, mip_abs_gap: 0.99 },
  evenness: { mip_rel_gap: 0.02, mip_abs_gap: 0.99 },
};

/**
 * One stage of the model, from a plan that is known. `time_limit` is looked at between steps only: it may take longer.
 *
 * @param start values by column of a plan that keeps what is frozen
 */
export function runStage(solver: Highs, model: CompanyModel, stage: Stage, frozen: Frozen, start: Float64Array, seconds: number): StageResult {
  const rowUpper = model.rowUpper.slice();
  rowUpper[model.freezeRow.shortfall] = frozen.shortfall;
  rowUpper[model.freezeRow.stillness] = frozen.stillness;
  return solver.withModel(
    {
      numCols: model.columns, numRows: model.rows, colCost: model.costs[stage], colLower: model.lower, colUpper: model.upper,
      rowLower: model.rowLower, rowUpper, integrality: model.isWhole,
      matrix: { format: 'csr', numRows: model.rows, numCols: model.columns, starts: model.starts, indices: model.indices, values: model.values },
    },
    (one) => {
      one.options.set({ output_flag: false, time_limit: Math.max(0.1, seconds), ...GAPS[stage] });
      one.setSolution({ colValue: start });
      one.run();
      const isFound = one.info.get('primal_solution_status') === 2;
      return { values: isFound ? Float64Array.from(one.getSolution().colValue ?? [], Math.round) : null, bound: Number(one.info.get('mip_dual_bound')) };
    },
  );
}
