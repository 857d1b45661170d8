/** An arc without a limit of its own. */
export const UNLIMITED = Number.MAX_SAFE_INTEGER;

/**
 * A network of arcs that carry whole units, in typed arrays: capacities and costs are whole numbers, a lower bound is a
 * reward on an arc beside, a convex cost is several arcs side by side, the cheapest first. An arc has one cost for each
 * level; the first level counts before the second, whatever the numbers.
 */
export class FlowNetwork {
  nodes = 0;
  arcs = 0;
  source = new Int32Array(64);
  target = new Int32Array(64);
  capacity = new Float64Array(64);
  readonly costs: Float64Array[];
  /** units that come in at a node, or leave the network there (below zero) */
  readonly supply: number[] = [];
  /** by node: an arc out of it that is part of the first tree, or -1 */
  readonly startArc: number[] = [];

  constructor(readonly levels: number) {
    this.costs = Array.from({ length: levels }, () => new Float64Array(64));
  }

  addNode(supply = 0): number {
    this.supply.push(supply);
    this.startArc.push(-1);
    return this.nodes++;
  }

  /** @param costs of one unit, by level; what is not said is zero */
  addArc(source: number, target: number, capacity: number, ...costs: readonly number[]): number {
    if (this.arcs === this.source.length) this.grow();
    const arc = this.arcs++;
    this.source[arc] = source;
    this.target[arc] = target;
    this.capacity[arc] = capacity;
    for (let level = 0; level < costs.length; level += 1) this.costs[level]![arc] = costs[level]!;
    return arc;
  }

  /**
   * Lets the first plan send on all that comes in at the arc's source by this arc. Following such arcs must lead to one
   * node, and their capacities must carry all that comes together.
   */
  startBy(arc: number): void {
    this.startArc[this.source[arc]!] = arc;
  }

  private grow(): void {
    const size = this.source.length * 2;
    const longer = (from: Float64Array): Float64Array<ArrayBuffer> => {
      const to = new Float64Array(size);
      to.set(from);
      return to;
    };
    const [source, target] = [new Int32Array(size), new Int32Array(size)];
    source.set(this.source);
    target.set(this.target);
    this.source = source;
    this.target = target;
    this.capacity = longer(this.capacity);
    this.costs.forEach((cost, level) => (this.costs[level] = longer(cost)));
  }
}
