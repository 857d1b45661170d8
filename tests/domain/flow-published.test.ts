import { describe, expect, test } from 'vitest';
import { FlowNetwork, UNLIMITED } from '../../server/domain/planning/flow/flow-network.ts';
import { minCostFlow } from '../../server/domain/planning/flow/min-cost-flow.ts';

/** The least cost of bringing what is supplied to where it is asked for; what is supplied beyond that stays. */
function transport(supply: readonly number[], demand: readonly number[], costs: readonly (readonly number[])[]): number {
  const network = new FlowNetwork(1);
  const from = supply.map((units) => network.addNode(units));
  const to = demand.map((units) => network.addNode(-units));
  const rest = network.addNode(demand.reduce((sum, units) => sum + units, 0) - supply.reduce((sum, units) => sum + units, 0));
  costs.forEach((row, at) => row.forEach((cost, column) => network.addArc(from[at]!, to[column]!, UNLIMITED, cost)));
  for (const node of from) network.addArc(node, rest, UNLIMITED, 0);
  return minCostFlow(network).costs[0]!;
}

const assignment = (costs: readonly (readonly number[])[]): number => transport(costs.map(() => 1), costs.map(() => 1), costs);

describe('published values come out of the flow', () => {
  // G. B. Dantzig, Linear Programming and Extensions (1963), chapter 3.3; the first model of the GAMS library. Data and citation from
  // memory. Distances are in tenths of a thousand miles, so a unit of cost is 90 / 10 / 1000 of a thousand dollars: 0.009.
  test('two canneries supply three cities for 153.675 (P-01)', () => {
    expect(transport([350, 600], [325, 300, 275], [[25, 17, 18], [25, 18, 14]]) * 9).toBe(153_675);
  });

  // W. L. Winston, Operations Research, chapter 7 (transportation). Data and citation from memory.
  test('Powerco sends power to four cities for 1020 (P-02)', () => {
    expect(transport([35, 50, 40], [45, 20, 30, 30], [[8, 6, 10, 9], [9, 12, 13, 7], [14, 9, 16, 5]])).toBe(1020);
  });

  // W. L. Winston, Operations Research, chapter 7 (assignment). Data and citation from memory.
  test('Machineco sets up its machines in 15 hours (P-03)', () => {
    expect(assignment([[14, 5, 8, 7], [2, 12, 6, 5], [7, 8, 3, 9], [2, 4, 6, 10]])).toBe(15);
  });

  // A textbook example of the Hungarian method, from memory.
  test('three are assigned to three for 950 (P-04)', () => {
    expect(assignment([[250, 400, 350], [400, 600, 350], [200, 400, 250]])).toBe(950);
  });
});

describe('levels, limits and what cannot be sent', () => {
  test('a second level only chooses among what is best at the first', () => {
    const network = new FlowNetwork(2);
    const [from, by, to] = [network.addNode(3), network.addNode(), network.addNode(-3)];
    const dear = network.addArc(from, to, UNLIMITED, 1, -1_000_000);
    const first = network.addArc(from, by, 2, 0, 5);
    const second = network.addArc(from, by, 2, 0, 7);
    network.addArc(by, to, UNLIMITED, 0, 0);
    const { flow, costs } = minCostFlow(network);
    expect([flow[dear], flow[first], flow[second], ...costs]).toEqual([0, 2, 1, 0, 17]);
  });

  test.each([
    ['an arc full to its last unit carries the supply', 4, false],
    ['one unit less does not', 3, true],
  ])('%s', (_, capacity, isRefused) => {
    const network = new FlowNetwork(1);
    const [from, to] = [network.addNode(4), network.addNode(-4)];
    network.addArc(from, to, capacity, 1);
    const solve = (): number => minCostFlow(network).costs[0]!;
    if (isRefused) expect(solve).toThrow('cannot carry');
    else expect(solve()).toBe(4);
  });

  test('a circle without a limit that earns for ever is refused', () => {
    const network = new FlowNetwork(1);
    const [one, other] = [network.addNode(), network.addNode()];
    network.addArc(one, other, UNLIMITED, -2);
    network.addArc(other, one, UNLIMITED, 1);
    expect(() => minCostFlow(network)).toThrow('for ever');
  });
});
