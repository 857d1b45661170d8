import type { FlowNetwork } from './flow-network.ts';
import { UNLIMITED } from './flow-network.ts';
import { SpanningTree } from './spanning-tree.ts';

const AT_LOWER = 1;
const AT_UPPER = -1;
/** in the tree, or frozen: not to be looked at */
const RESTS = 0;

/**
 * The network simplex method with strongly feasible trees (Cunningham 1976: the last arc of the cycle that blocks leaves, so
 * that it ends also where pivots change nothing) and pricing by blocks. Arithmetic is in whole numbers below 2^53, so the
 * flow is exact. Chosen before successive shortest paths because a season sends thousands of units that hardly differ: a pivot
 * looks at a few hundred arcs, a shortest path at all of them, and the tree goes on from one level to the next. Ninety thousand
 * pivots plan 120 games in a fifth of the time that HiGHS takes (`npm run bench -- plan-large`). From memory: Ahuja, Magnanti, Orlin, Network Flows (1993), chapter 11.
 */
export class NetworkSimplex {
  readonly flow: Float64Array;
  readonly tree: SpanningTree;
  private readonly source: Int32Array;
  private readonly target: Int32Array;
  private readonly capacity: Float64Array;
  private readonly state: Int8Array;
  /** arcs that may still change */
  private open: Int32Array;
  private readonly root: number;
  readonly arcs: number;
  pivots = 0;

  constructor(private readonly network: FlowNetwork) {
    this.root = network.nodes;
    const loose = network.startArc.filter((arc) => arc === -1).length;
    this.arcs = network.arcs + loose;
    this.source = new Int32Array(this.arcs);
    this.target = new Int32Array(this.arcs);
    this.capacity = new Float64Array(this.arcs).fill(UNLIMITED);
    this.source.set(network.source.subarray(0, network.arcs));
    this.target.set(network.target.subarray(0, network.arcs));
    this.capacity.set(network.capacity.subarray(0, network.arcs));
    this.flow = new Float64Array(this.arcs);
    this.state = new Int8Array(this.arcs).fill(AT_LOWER);
    this.tree = new SpanningTree(network.nodes + 1, this.root);
    this.plant();
    this.open = Int32Array.from({ length: this.arcs }, (_, arc) => arc);
  }

  /** Costs of one unit by arc, those of the arcs to and from the root appended. */
  costOf(level: number): Float64Array {
    const cost = new Float64Array(this.arcs);
    if (level === -1) return cost.fill(1, this.network.arcs);
    cost.set(this.network.costs[level]!.subarray(0, this.network.arcs));
    return cost;
  }

  /** Units that go over arcs which the network does not have: what cannot be sent at all. */
  unsent(): number {
    let sum = 0;
    for (let arc = this.network.arcs; arc < this.arcs; arc += 1) sum += this.flow[arc]!;
    return sum;
  }

  /** The first tree: the arcs named for it, and beside them arcs of our own from and to the root. */
  private plant(): void {
    const { startArc, supply, nodes } = this.network;
    const order = this.fromLeaves();
    const passing = Float64Array.from(supply);
    let own = this.network.arcs;
    for (const node of order) {
      const arc = startArc[node]!;
      if (arc === -1) continue;
      this.flow[arc] = passing[node]!;
      passing[this.target[arc]!]! += passing[node]!;
      if (this.flow[arc]! < 0 || this.flow[arc]! > this.capacity[arc]!) throw new Error('The first plan does not fit its arcs.');
    }
    for (let node = 0; node < nodes; node += 1) {
      if (startArc[node] !== -1) continue;
      const isUp = passing[node]! >= 0;
      this.source[own] = isUp ? node : this.root;
      this.target[own] = isUp ? this.root : node;
      this.flow[own] = Math.abs(passing[node]!);
      this.state[own] = RESTS;
      this.tree.hang(node, this.root, own, isUp);
      own += 1;
    }
    for (let at = order.length - 1; at >= 0; at -= 1) {
      const arc = startArc[order[at]!]!;
      if (arc === -1) continue;
      this.state[arc] = RESTS;
      this.tree.hang(order[at]!, this.target[arc]!, arc, true);
    }
  }

  /** Nodes ordered so that each stands before the node its first arc leads to. */
  private fromLeaves(): number[] {
    const { startArc, nodes } = this.network;
    const waiting = new Int32Array(nodes);
    for (const arc of startArc) if (arc !== -1) waiting[this.target[arc]!]! += 1;
    const order: number[] = [];
    for (let node = 0; node < nodes; node += 1) if (waiting[node] === 0) order.push(node);
    for (let at = 0; at < order.length; at += 1) {
      const arc = startArc[order[at]!]!;
      if (arc !== -1 && --waiting[this.target[arc]!]! === 0) order.push(this.target[arc]!);
    }
    if (order.length < nodes) throw new Error('The first plan goes round in a circle.');
    return order;
  }

  /** Brings the flow to the least cost among those the earlier calls of `freeze` left open. */
  minimize(cost: Float64Array): void {
    const { source, target, state, open } = this;
    const { potential } = this.tree;
    this.tree.settle(cost, source);
    const length = open.length;
    const block = Math.max(24, Math.ceil(Math.sqrt(length)));
    let at = 0;
    for (let looked = 0; looked < length; ) {
      let worst = 0;
      let entering = -1;
      while (looked < length) {
        const until = Math.min(length, at + block, at + length - looked);
        looked += until - at;
        for (; at < until; at += 1) {
          const arc = open[at]!;
          const by = state[arc]! * (cost[arc]! + potential[source[arc]!]! - potential[target[arc]!]!);
          if (by < worst) {
            worst = by;
            entering = arc;
          }
        }
        if (at === length) at = 0;
        if (entering !== -1) break;
      }
      if (entering === -1) return;
      looked = 0;
      this.pivot(entering, cost);
    }
  }

  /** Fixes every arc whose change would cost: what stays open are the flows of the same cost. */
  freeze(cost: Float64Array): void {
    const { potential } = this.tree;
    this.open = this.open.filter((arc) => {
      if (this.state[arc] === RESTS) return true;
      if (cost[arc]! + potential[this.source[arc]!]! - potential[this.target[arc]!]! === 0) return true;
      this.state[arc] = RESTS;
      return false;
    });
  }

  private pivot(entering: number, cost: Float64Array): void {
    const { flow, capacity, source, target } = this;
    const { parent, by, isUp } = this.tree;
    this.pivots += 1;
    const grows = this.state[entering] === AT_LOWER;
    const first = grows ? source[entering]! : target[entering]!;
    const second = grows ? target[entering]! : source[entering]!;
    const join = this.tree.join(first, second);
    let most = capacity[entering]!;
    let leaving = -1;
    let isFirst = false;
    for (let node = first; node !== join; node = parent[node]!) {
      const arc = by[node]!;
      const room = isUp[node] === 1 ? flow[arc]! : capacity[arc]! - flow[arc]!;
      if (room < most) {
        most = room;
        leaving = node;
        isFirst = true;
      }
    }
    for (let node = second; node !== join; node = parent[node]!) {
      const arc = by[node]!;
      const room = isUp[node] === 1 ? capacity[arc]! - flow[arc]! : flow[arc]!;
      if (room <= most) {
        most = room;
        leaving = node;
        isFirst = false;
      }
    }
    if (most > UNLIMITED / 2) throw new Error('A circle of arcs without a limit earns for ever.');
    if (most > 0) {
      flow[entering]! += grows ? most : -most;
      for (let node = first; node !== join; node = parent[node]!) flow[by[node]!]! += isUp[node] === 1 ? -most : most;
      for (let node = second; node !== join; node = parent[node]!) flow[by[node]!]! += isUp[node] === 1 ? most : -most;
    }
    if (leaving === -1) {
      this.state[entering] = grows ? AT_UPPER : AT_LOWER;
      return;
    }
    const left = by[leaving]!;
    this.state[entering] = RESTS;
    this.state[left] = flow[left] === 0 ? AT_LOWER : AT_UPPER;
    this.tree.rehang(isFirst ? first : second, isFirst ? second : first, leaving, entering, source, cost);
  }
}
