import { keepsCompany } from '../../domain/planning/company/checked-plan.ts';
import { MOST_ENTRIES, companyModel, entriesOf } from '../../domain/planning/company/company-model.ts';
import { checkedPlan } from '../../domain/planning/company/company-plan.ts';
import type { Proof } from '../../domain/planning/company/company-plan.ts';
import { companySeason } from '../../domain/planning/company/company-season.ts';
import type { CompanySeason } from '../../domain/planning/company/company-season.ts';
import { STAGES, costOf } from '../../domain/planning/company/model-rows.ts';
import type { CompanyModel, Stage } from '../../domain/planning/company/model-rows.ts';
import { improvedCounts, repairedCounts } from '../../domain/planning/company/repaired-plan.ts';
import { wholeBound } from '../../domain/planning/company/whole-bound.ts';
import { planPlaces } from '../../domain/planning/places/plan-places.ts';
import type { PlanSeason, PlanWishes, SeasonPlan } from '../../domain/planning/season.ts';
import { highs, runStage } from './highs-stage.ts';
import type { SolveOrder } from './solve-order.ts';

type OnSoFar = (plan: SeasonPlan) => void;

/** What each stage may take of the time that is left, in shares, and at most, in seconds. */
const TIME: Readonly<Record<Stage, { share: number; atMostSeconds: number }>> = {
  shortfall: { share: 0.85, atMostSeconds: Infinity },
  stillness: { share: 0.7, atMostSeconds: Infinity },
  evenness: { share: 1, atMostSeconds: 3 },
};
/** What counts as no limit of sponsors: a relaxation, whose bound holds for different sponsors as well. */
const ANY_SPONSORS = 9999;

const secondsNow = (): number => performance.now() / 1000;

/**
 * Plans one season: places by flow, and where that plan breaks seconds or company, whole numbers by HiGHS from there on.
 * Every plan with company that leaves here went through the separate check.
 *
 * @param onSoFar hears of each plan that could be used already
 */
export async function solveSeason(order: SolveOrder, onSoFar: OnSoFar): Promise<SeasonPlan> {
  const until = secondsNow() + order.seconds;
  const { season, wishes } = order;
  const inPlaces = planPlaces(season, wishes);
  if (!order.company) return inPlaces;
  const proof = proofOf(season, wishes, inPlaces);
  if (inPlaces.weightedShortfall === proof.bound && keepsCompany(season, inPlaces.reads)) return { ...inPlaces, ...proof, by: 'company', isProven: true };
  const of = companySeason(season);
  const repaired = repairedCounts(of, inPlaces.reads);
  onSoFar(checkedPlan(of, repaired, proof));
  const counts = improvedCounts(of, repaired, wishes, proof.bound);
  const first = checkedPlan(of, counts, proof);
  onSoFar(first);
  if (entriesOf(of) > MOST_ENTRIES) return first;
  const model = companyModel(of, wishes);
  if (model.indices.length > MOST_ENTRIES) return first;
  return onwards(of, model, { plan: first, values: model.valuesOf(counts), proof }, () => until - secondsNow(), onSoFar);
}

/**
 * A kind whose sponsors compete holds so many reads in a game where places are planned, and so many different sponsors where
 * company is: less strict, so that the shortfall in places proves nothing then.
 */
function proofOf(season: PlanSeason, wishes: PlanWishes, inPlaces: SeasonPlan): Proof {
  if (inPlaces.weightedShortfall === 0) return { bound: 0, bottlenecks: [] };
  const promises = season.promises.map((promise) => ({ ...promise, sponsorsPerGame: ANY_SPONSORS }));
  const { bound, bottlenecks } = planPlaces({ ...season, promises }, wishes);
  return { bound, bottlenecks };
}

interface Reached {
  readonly plan: SeasonPlan;
  readonly values: Float64Array;
  readonly proof: Proof;
}

/** Stage by stage from a first plan; what a stage reached is frozen for those after it. */
async function onwards(of: CompanySeason, model: CompanyModel, first: Reached, secondsLeft: () => number, onSoFar: OnSoFar): Promise<SeasonPlan> {
  const solver = await highs();
  const frozen = { shortfall: Infinity, stillness: Infinity };
  let reached = first;
  for (const stage of STAGES) {
    const seconds = Math.min(TIME[stage].atMostSeconds, secondsLeft() * TIME[stage].share);
    const isReached = stage === 'shortfall' && reached.plan.isProven;
    if (!isReached && model.hasStage[stage] && seconds > 0) {
      const result = runStage(solver, model, stage, frozen, reached.values, seconds);
      reached = better(of, model, stage, reached, result);
      onSoFar(reached.plan);
    }
    if (stage !== 'evenness') frozen[stage] = costOf(model, stage, reached.values);
  }
  return reached.plan;
}

/** The new solution where it is better and passes the check, else what there was; the bound of the shortfall either way. */
function better(of: CompanySeason, model: CompanyModel, stage: Stage, before: Reached, result: { values: Float64Array | null; bound: number }): Reached {
  const bound = stage === 'shortfall' && Number.isFinite(result.bound) ? Math.max(before.proof.bound, wholeBound(result.bound)) : before.proof.bound;
  const proof = { ...before.proof, bound };
  const told = { plan: { ...before.plan, bound, isProven: before.plan.weightedShortfall === bound }, values: before.values, proof };
  if (result.values === null) return told;
  const values = model.valuesOf(Int32Array.from(result.values.subarray(0, of.cells.length)));
  if (costOf(model, stage, values) > costOf(model, stage, before.values)) return told;
  const plan = checkedPlan(of, values, proof);
  return plan.weightedShortfall > before.plan.weightedShortfall ? told : { plan, values, proof };
}
