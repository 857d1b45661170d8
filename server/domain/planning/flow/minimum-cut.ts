import type { FlowNetwork } from './flow-network.ts';

/**
 * The nodes that could still be sent more from `origins`: along arcs with room, and back along arcs with flow. Where the flow is
 * a maximum, the arcs out of these nodes are a minimum cut: full, and nothing comes back.
 *
 * @param closed arcs that are looked at as if they were not there, such as those of what is not sent
 * @returns 1 for every node that is reached
 */
export function reachable(network: FlowNetwork, flow: Float64Array, origins: Iterable<number>, closed: Iterable<number>): Uint8Array {
  const { nodes, arcs, source, target } = network;
  const capacity = network.capacity.slice(0, arcs);
  for (const arc of closed) capacity[arc] = flow[arc]!;
  const first = new Int32Array(nodes + 1);
  for (let arc = 0; arc < arcs; arc += 1) {
    if (flow[arc]! < capacity[arc]!) first[source[arc]! + 1]! += 1;
    if (flow[arc]! > 0) first[target[arc]! + 1]! += 1;
  }
  for (let node = 0; node < nodes; node += 1) first[node + 1]! += first[node]!;
  const ways = new Int32Array(first[nodes]!);
  const filled = first.slice();
  for (let arc = 0; arc < arcs; arc += 1) {
    if (flow[arc]! < capacity[arc]!) ways[filled[source[arc]!]!++] = target[arc]!;
    if (flow[arc]! > 0) ways[filled[target[arc]!]!++] = source[arc]!;
  }
  const isReached = new Uint8Array(nodes);
  const queue = [...origins];
  for (const node of queue) isReached[node] = 1;
  for (let at = 0; at < queue.length; at += 1) {
    const node = queue[at]!;
    for (let way = first[node]!; way < first[node + 1]!; way += 1) {
      const to = ways[way]!;
      if (isReached[to] === 1) continue;
      isReached[to] = 1;
      queue.push(to);
    }
  }
  return isReached;
}
