import type { Worker } from 'node:worker_threads';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { PlanSolver } from '../../server/planning/solver/plan-solver.service.ts';
import type { SolverOptions } from '../../server/planning/solver/plan-solver.service.ts';
import { aCrowdedSeason } from '../support/crowded-season.ts';
import { aGame, aPlanSeason, aPromise, aWindow } from '../support/small-plan-season.ts';
import { builtSolvingWorker } from '../support/solving-worker.ts';

vi.setConfig({ testTimeout: 60_000 });

let workerFile: URL;
const solvers: PlanSolver[] = [];
beforeAll(async () => {
  workerFile = await builtSolvingWorker('plan-solver');
}, 60_000);
afterAll(() => Promise.all(solvers.map((solver) => solver.close())));

function aSolver(options: SolverOptions = {}): PlanSolver {
  const solver = new PlanSolver({ workerFile, ...options });
  solvers.push(solver);
  return solver;
}

const WISHES = { keeps: 'nothing' } as const;
const small = aPlanSeason([aGame(1, [aWindow('timeOut1')])], [aPromise('Creamery', 1, ['g1'])]);
const long = aCrowdedSeason(8, 14);
const soon = { seconds: 30, company: true } as const;
const isFull = { shortfallReads: 0, bound: 0, isProven: true };

test('a season is planned in a thread, in places or with company', async () => {
  const solver = aSolver();
  expect(await solver.solve(small, WISHES, { seconds: 5, company: false })).toMatchObject({ ...isFull, by: 'places' });
  expect(await solver.solve(small, WISHES, soon)).toMatchObject({ ...isFull, by: 'company' });
});

test('a solve that is cancelled ends at once, and the next one is done', async () => {
  const solver = aSolver({ threads: 1 });
  const leaving = new AbortController();
  const cancelled = solver.solve(long, WISHES, { ...soon, signal: leaving.signal });
  const waiting = new AbortController();
  const neverBegun = solver.solve(small, WISHES, { ...soon, signal: waiting.signal });
  const next = solver.solve(small, WISHES, soon);
  waiting.abort();
  await expect(neverBegun).rejects.toMatchObject({ code: 'plan-cancelled' });
  leaving.abort();
  await expect(cancelled).rejects.toMatchObject({ code: 'plan-cancelled' });
  expect(await next).toMatchObject(isFull);
  await expect(solver.solve(small, WISHES, { ...soon, signal: leaving.signal })).rejects.toMatchObject({ code: 'plan-cancelled' });
});

test('more plans than may wait are refused, and those that wait are not', async () => {
  const solver = aSolver({ threads: 1, mostWaiting: 2 });
  const [first, second, third, fourth] = [1, 2, 3, 4].map(() => solver.solve(small, WISHES, soon));
  await expect(fourth).rejects.toMatchObject({ code: 'planning-busy' });
  expect(await Promise.all([first, second, third])).toMatchObject([isFull, isFull, isFull]);
});

test('a thread that is killed costs its season only', async () => {
  const solver = aSolver({ threads: 1 });
  const [dead, after] = [solver.solve(long, WISHES, soon), solver.solve(small, WISHES, soon)];
  const { threads } = solver as unknown as { threads: [{ worker: Worker }] };
  void threads[0].worker.terminate();
  expect(await dead.then(() => 'planned', String)).toContain('the plan could not be worked out');
  expect(await after).toMatchObject(isFull);
});

test('a season that cannot be read at all is told, and the next is planned', async () => {
  const solver = aSolver({ threads: 1 });
  await expect(solver.solve({ ...small, games: null as never }, WISHES, soon)).rejects.toThrow('the plan could not be worked out');
  expect(await solver.solve(small, WISHES, soon)).toMatchObject(isFull);
});

test('a season that cannot be handed over at all is told, and the next is planned', async () => {
  const solver = aSolver({ threads: 1 });
  await expect(solver.solve({ ...small, games: (() => []) as never }, WISHES, soon)).rejects.toThrow('the plan could not be worked out');
  expect(await solver.solve(small, WISHES, soon)).toMatchObject(isFull);
});

test('when the time is up the plan so far is the answer, with its bound', async () => {
  const solver = aSolver({ threads: 1, graceSeconds: 0 });
  await solver.solve(small, WISHES, soon);
  const plan = await solver.solve(long, WISHES, { seconds: 6, company: true });
  expect(plan.by).toBe('company');
  expect(plan.bound).toBeLessThanOrEqual(plan.weightedShortfall);
  expect(plan.isProven).toBe(plan.bound === plan.weightedShortfall);
  expect(plan.reads.length).toBeGreaterThan(100);
});

test('while a season is solved the server goes on with other work', async () => {
  const order: string[] = [];
  const solving = aSolver().solve(long, WISHES, { seconds: 8, company: true }).then(() => order.push('solved'));
  for (let turn = 1; turn <= 3; turn += 1) await new Promise<void>((done) => setTimeout(() => done(void order.push(`turn ${turn}`)), 20));
  await solving;
  expect(order).toEqual(['turn 1', 'turn 2', 'turn 3', 'solved']);
});

test('a solver that closes cancels what is waited for', async () => {
  const solver = aSolver({ threads: 1 });
  const [running, waiting] = [solver.solve(long, WISHES, soon), solver.solve(small, WISHES, soon)];
  const [first, second] = [expect(running).rejects.toMatchObject({ code: 'plan-cancelled' }), expect(waiting).rejects.toMatchObject({ code: 'plan-cancelled' })];
  await solver.close();
  await Promise.all([first, second]);
  await expect(solver.solve(small, WISHES, soon)).rejects.toMatchObject({ code: 'plan-cancelled' });
});
