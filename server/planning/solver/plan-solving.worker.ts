import { parentPort } from 'node:worker_threads';
import { solveSeason } from './season-solving.ts';
import type { SolveAnswer, SolveOrder } from './solve-order.ts';

parentPort?.on('message', (order: SolveOrder) => {
  const answer = (one: SolveAnswer): void => parentPort?.postMessage(one);
  const { id } = order;
  solveSeason(order, (plan) => answer({ id, kind: 'soFar', plan })).then(
    (plan) => answer({ id, kind: 'plan', plan }),
    (failure: unknown) => answer({ id, kind: 'failed', reason: String((failure as Error)?.stack ?? failure).slice(0, 2000) }),
  );
});
