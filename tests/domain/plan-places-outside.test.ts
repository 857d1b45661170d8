import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import highsLoader from 'highs';
import { describe, expect, onTestFinished, test } from 'vitest';
import { checkPlan } from '../../server/domain/planning/check-plan.ts';
import { isOfCompany } from '../../server/domain/planning/plan-fault.ts';
import { planPlaces } from '../../server/domain/planning/places/plan-places.ts';
import type { PlanSeason, SeasonPlan } from '../../server/domain/planning/season.ts';
import { PlacesModel, paceOf, writeProgram } from '../support/places-model.ts';
import { randomPlanSeason } from '../support/random-plan-season.ts';

const highs = await highsLoader();
const seeds = Array.from({ length: 200 }, (_, at) => at + 1);
const plans = new Map<number, SeasonPlan>();

function planOf(seed: number): SeasonPlan {
  const known = plans.get(seed) ?? planPlaces(randomPlanSeason(seed), { keeps: 'nothing' });
  plans.set(seed, known);
  return known;
}

/** Several seasons in one program: they have no variable in common, so each comes to its own least. */
interface Together {
  readonly seed: number;
  readonly season: PlanSeason;
  readonly model: PlacesModel;
}

const together = (some: readonly number[]): Together[] => some.map((seed) => {
  const season = randomPlanSeason(seed);
  return { seed, season, model: new PlacesModel(season, `n${seed}_`) };
});

/** A goal for each season as one variable, and the sum of all as the goal of the program. */
function programOf(level: string, seasons: readonly Together[], goals: readonly string[]): string {
  seasons.forEach(({ seed, model }, at) => model.rows.push(`${goals[at]} - ${level}_${seed} = 0`));
  return writeProgram(seasons.map(({ seed }) => `${level}_${seed}`).join(' + '), ...seasons.map(({ model }) => model));
}

/** The least of each season, which is then kept. */
function leastByHighs(level: string, seasons: readonly Together[], goals: readonly string[]): number[] {
  const { Status, Columns } = highs.solve(programOf(level, seasons, goals), { output_flag: false, mip_rel_gap: 0 });
  if (Status !== 'Optimal') throw new Error(`HiGHS says ${Status}`);
  return seasons.map(({ seed, model }, at) => {
    const value = Math.round((Columns[`${level}_${seed}`] as { Primal: number }).Primal);
    model.freeze(goals[at]!, value);
    return value;
  });
}

function inLots<Item>(items: readonly Item[], size: number): Item[][] {
  return Array.from({ length: Math.ceil(items.length / size) }, (_, lot) => items.slice(lot * size, (lot + 1) * size));
}

/** What a plan comes to, counted anew from its reads. */
function measured(season: PlanSeason, plan: SeasonPlan) {
  const at = (promiseId: string, gameId: string): number => plan.reads.filter((read) => read.promiseId === promiseId && read.gameId === gameId).length;
  const bare = season.promises.flatMap((promise) => promise.pinnedGameIds.filter((gameId) => at(promise.promiseId, gameId) === 0)).length;
  const loose = season.placed.filter((read) => !read.isFixed && season.games.some((game) => game.gameId === read.gameId && !game.isLocked));
  const leaving = season.promises.flatMap(({ promiseId }) => season.games.map(({ gameId }) => {
    const before = loose.filter((read) => read.promiseId === promiseId && read.gameId === gameId).length;
    const stays = season.placed.filter((read) => read.isFixed && read.promiseId === promiseId && read.gameId === gameId).length;
    return Math.max(0, before - (at(promiseId, gameId) - stays));
  })).reduce((sum, reads) => sum + reads, 0);
  const pace = season.promises.flatMap((promise) => promise.slots.flatMap((slot) => paceOf(season, promise, slot).map(({ games, ideal }) => {
    const given = games.reduce((sum, game) => sum + at(promise.promiseId, season.games[game]!.gameId), 0);
    return Math.abs(60 * given - ideal);
  }))).reduce((sum, sixtieths) => sum + sixtieths, 0);
  return { bare, leaving, pace };
}

test.each(inLots(seeds, 40).map((lot) => [lot[0]!, lot] as const))('on 200 random seasons the weighted shortfall is that of a program solved by HiGHS, and proven (from the season %i on)', (_, lot) => {
  const seasons = together(lot);
  const shortfalls = leastByHighs('shortfall', seasons, seasons.map(({ model }) => model.shortfall));
  const ours = lot.map((seed) => planOf(seed)).map(({ weightedShortfall, bound, isProven }) => ({ weightedShortfall, bound, isProven }));
  expect(ours).toEqual(shortfalls.map((shortfall) => ({ weightedShortfall: shortfall, bound: shortfall, isProven: true })));
});

test.each(['nothing', 'whatIsPlaced'] as const)('on 200 random seasons a plan that keeps %s holds, and its bottlenecks come to what is missing', (keeps) => {
  for (const seed of seeds) {
    const season = randomPlanSeason(seed);
    const plan = keeps === 'nothing' ? planOf(seed) : planPlaces(season, { keeps });
    const walls = checkPlan(season, plan.reads).filter((fault) => fault.severity === 'wall' && !isOfCompany(fault));
    const missing = plan.bottlenecks.reduce((sum, one) => sum + one.needed - one.places, 0);
    const asked = season.promises.flatMap((promise) => promise.slots).reduce((sum, slot) => sum + slot.reads, 0);
    expect({ seed, walls, missing, asked }).toEqual({ seed, walls: [], missing: plan.shortfallReads, asked: plan.reads.length + plan.shortfallReads });
    expect(plan.weightedShortfall).toBe(planOf(seed).weightedShortfall);
  }
});

test.each(['nothing', 'whatIsPlaced'] as const)('where a plan keeps %s, each level after the shortfall is that of HiGHS too', (keeps) => {
  const seasons = together(seeds.filter((seed) => seed % 16 === 0));
  const ours = seasons.map(({ seed, season }) => {
    const plan = keeps === 'nothing' ? planOf(seed) : planPlaces(season, { keeps });
    return { shortfall: plan.weightedShortfall, ...measured(season, plan) };
  });
  const goals = { shortfall: seasons.map(({ model }) => model.shortfall), bare: seasons.map(({ model }) => model.bare()), leaving: seasons.map(({ model }) => model.leaving()), pace: seasons.map(({ model }) => model.pace()) };
  const levels = keeps === 'nothing' ? ['shortfall', 'bare', 'pace'] as const : ['shortfall', 'bare', 'leaving', 'pace'] as const;
  for (const level of levels) expect(ours.map((plan) => plan[level])).toEqual(leastByHighs(level, seasons, goals[level]));
});

/** Solvers of Debian: how each is asked for the values of a program's variables. */
const SOLVERS = {
  glpsol: (program: string, answer: string): string[] => ['--lp', program, '-o', answer],
  cbc: (program: string, answer: string): string[] => [program, 'ratioGap', '0', 'solve', 'solution', answer],
};

describe.each(Object.keys(SOLVERS) as (keyof typeof SOLVERS)[])('%s', (solver) => {
  const isHere = spawnSync(solver, [solver === 'glpsol' ? '--version' : '-quit']).error === undefined;

  test.skipIf(!isHere)(`finds the same shortfall on 200 random seasons (${isHere ? 'installed' : 'not installed here, so not asked'})`, () => {
    const folder = mkdtempSync(join(tmpdir(), 'rafterline-plan-'));
    onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
    const [program, answer] = [join(folder, 'season.lp'), join(folder, 'answer.txt')];
    for (const lot of inLots(seeds, 40)) {
      const seasons = together(lot);
      writeFileSync(program, programOf('total', seasons, seasons.map(({ model }) => model.shortfall)));
      execFileSync(solver, SOLVERS[solver](program, answer), { stdio: 'ignore' });
      const text = readFileSync(answer, 'utf8');
      const found = lot.map((seed) => Math.round(Number(new RegExp(`total_${seed}\\s+(?:\\*\\s+)?([-\\d.e+]+)`).exec(text)?.[1] ?? 0)));
      expect(found).toEqual(lot.map((seed) => planOf(seed).weightedShortfall));
    }
  });
});
