import type { FlowNetwork } from './flow-network.ts';
import { NetworkSimplex } from './network-simplex.ts';

export interface MinCostFlow {
  /** units on each arc */
  readonly flow: Float64Array;
  /** cost of the flow at each level */
  readonly costs: readonly number[];
}

/**
 * The flow that sends all supply, at the least cost of the first level, among those at the least cost of the second, and so on.
 * Each level is solved by itself; then every arc whose reduced cost is not zero is frozen, which leaves exactly the flows that
 * are optimal so far. So no weights are needed that could run out of 2^53.
 *
 * @throws where the supply cannot be sent, or a circle of arcs without a limit earns for ever
 */
export function minCostFlow(network: FlowNetwork): MinCostFlow {
  const simplex = new NetworkSimplex(network);
  if (simplex.unsent() > 0) {
    const cost = simplex.costOf(-1);
    simplex.minimize(cost);
    if (simplex.unsent() > 0) throw new Error('The network cannot carry its supply.');
    simplex.freeze(cost);
  }
  const costs = network.costs.map((_, level) => {
    const cost = simplex.costOf(level);
    simplex.minimize(cost);
    simplex.freeze(cost);
    let sum = 0;
    for (let arc = 0; arc < network.arcs; arc += 1) sum += cost[arc]! * simplex.flow[arc]!;
    return sum;
  });
  return { flow: simplex.flow.subarray(0, network.arcs), costs };
}
