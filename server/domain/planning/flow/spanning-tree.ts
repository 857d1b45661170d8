/** The tree of the network simplex: every node hangs on its parent by one arc, and knows its children. */
export class SpanningTree {
  readonly parent: Int32Array;
  /** arc between the node and its parent */
  readonly by: Int32Array;
  /** 1: that arc leads from the node to its parent */
  readonly isUp: Uint8Array;
  /** potentials under which every arc of the tree costs nothing */
  readonly potential: Float64Array;
  private readonly depth: Int32Array;
  private readonly firstChild: Int32Array;
  private readonly next: Int32Array;
  private readonly before: Int32Array;

  constructor(nodes: number, private readonly root: number) {
    this.parent = new Int32Array(nodes).fill(-1);
    this.by = new Int32Array(nodes).fill(-1);
    this.isUp = new Uint8Array(nodes);
    this.potential = new Float64Array(nodes);
    this.depth = new Int32Array(nodes);
    this.firstChild = new Int32Array(nodes).fill(-1);
    this.next = new Int32Array(nodes).fill(-1);
    this.before = new Int32Array(nodes).fill(-1);
  }

  hang(node: number, on: number, by: number, isUp: boolean): void {
    const first = this.firstChild[on]!;
    this.parent[node] = on;
    this.by[node] = by;
    this.isUp[node] = isUp ? 1 : 0;
    this.before[node] = -1;
    this.next[node] = first;
    if (first !== -1) this.before[first] = node;
    this.firstChild[on] = node;
  }

  private cut(node: number): void {
    const [before, next] = [this.before[node]!, this.next[node]!];
    if (before === -1) this.firstChild[this.parent[node]!] = next;
    else this.next[before] = next;
    if (next !== -1) this.before[next] = before;
  }

  /** The lowest node that both hang on. */
  join(one: number, other: number): number {
    const { parent, depth } = this;
    while (one !== other) {
      if (depth[one]! >= depth[other]!) one = parent[one]!;
      else other = parent[other]!;
    }
    return one;
  }

  /** Works out all depths and potentials anew. */
  settle(cost: Float64Array, source: Int32Array): void {
    this.potential[this.root] = 0;
    this.depth[this.root] = 0;
    this.walk(this.root, (node) => {
      const up = this.parent[node]!;
      const price = cost[this.by[node]!]!;
      this.depth[node] = this.depth[up]! + 1;
      this.potential[node] = this.potential[up]! + (source[this.by[node]!] === node ? -price : price);
    });
  }

  /** Takes out the arc above `leaving`, and hangs what it cut off on `on` by its node `node`, by the arc `by`. */
  rehang(node: number, on: number, leaving: number, by: number, source: Int32Array, cost: Float64Array): void {
    const isUp = source[by] === node;
    const shift = this.potential[on]! + (isUp ? -cost[by]! : cost[by]!) - this.potential[node]!;
    let [child, parent, arc] = [node, on, by];
    for (;;) {
      const [oldParent, oldArc] = [this.parent[child]!, this.by[child]!];
      this.cut(child);
      this.hang(child, parent, arc, source[arc] === child);
      if (child === leaving) break;
      [parent, arc, child] = [child, oldArc, oldParent];
    }
    this.shift(node, shift);
  }

  private shift(top: number, by: number): void {
    const { parent, depth, potential, firstChild, next } = this;
    let node = top;
    for (;;) {
      potential[node]! += by;
      depth[node] = depth[parent[node]!]! + 1;
      let to = firstChild[node]!;
      while (to === -1) {
        if (node === top) return;
        to = next[node]!;
        if (to === -1) node = parent[node]!;
      }
      node = to;
    }
  }

  private walk(top: number, visit: (node: number) => void): void {
    const stack = [top];
    for (let node = stack.pop(); node !== undefined; node = stack.pop()) {
      if (node !== top) visit(node);
      for (let child = this.firstChild[node]!; child !== -1; child = this.next[child]!) stack.push(child);
    }
  }
}
