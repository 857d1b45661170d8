import { FlowNetwork, UNLIMITED } from '../flow/flow-network.ts';
import { WEIGHT_OF_PRIORITY } from '../season.ts';
import type { PlanPromise, PlanWishes } from '../season.ts';
import { GameNodes } from './game-nodes.ts';
import type { SplitRooms } from './game-nodes.ts';
import { keyOf } from './open-season.ts';
import type { OpenSeason, OpenSlot, SlotGame } from './open-season.ts';
import { PACE_PER_READ, evenShares, paceBuckets } from './pace.ts';

/** What counts first, in this order. */
export const LEVEL = { shortfall: 0, aloud: 1, leaving: 2, pace: 3, shape: 4 } as const;

/** Arcs by which reads of a slot come to a game. */
export interface GameArcs {
  readonly slot: number;
  /** index in the season's games */
  readonly game: number;
  readonly firstArc: number;
  readonly untilArc: number;
  /** the arc of the promise's limit there, where it is not the arcs' own; else -1 */
  readonly limitArc: number;
}

export interface PlacesNetwork {
  readonly network: FlowNetwork;
  readonly sink: number;
  /** by slot: the node where its reads come in, and the arc of those that find no place */
  readonly origins: readonly number[];
  readonly shortfallArcs: readonly number[];
  readonly gameArcs: readonly GameArcs[];
  readonly games: GameNodes;
}

/**
 * The season as a network: the reads of a slot come in at its first bucket, go to games of the bucket or on to the next
 * bucket, and after the last one into the shortfall. At a game they pass the kind, where more sponsors compete than it holds, and
 * come through the windows into the sink.
 */
export function placesNetwork(season: OpenSeason, wishes: PlanWishes, splits: SplitRooms): PlacesNetwork {
  const network = new FlowNetwork(5);
  const sink = network.addNode(-season.slots.reduce((sum, slot) => sum + slot.reads, 0));
  const games = new GameNodes(network, sink, season, splits);
  const gameArcs: GameArcs[] = [];
  const origins: number[] = [];
  const shortfallArcs: number[] = [];
  const severalTimes = gamesOfSeveralSlots(season);
  season.slots.forEach((slot, index) => {
    const buckets = paceBuckets(slot);
    const shares = evenShares(slot);
    let node = network.addNode(slot.reads);
    origins.push(node);
    buckets.forEach((bucket, place) => {
      for (let at = bucket.from; at < bucket.until; at += 1) {
        const game = slot.games[at]!;
        if (game.room === 0 || slot.reads === 0) continue;
        const to = games.entry(slot.promise, game.at);
        if (to === -1) continue;
        const through = throughLimit(network, severalTimes, slot.promise, game, to);
        const firstArc = network.arcs;
        gameSteps(slot, game, shares[at]!, wishes).forEach((step) => network.addArc(node, through, step.reads, 0, step.aloud, step.leaving, 0, step.shape));
        gameArcs.push({ slot: index, game: game.at, firstArc, untilArc: network.arcs, limitArc: through === to ? -1 : network.startArc[through]! });
      }
      if (place < buckets.length - 1) node = nextBucket(network, node, slot.reads, bucket.toComeSixtieths);
    });
    const shortfall = network.addArc(node, sink, UNLIMITED, WEIGHT_OF_PRIORITY[slot.promise.priority]);
    network.startBy(shortfall);
    shortfallArcs.push(shortfall);
  });
  return { network, sink, origins, shortfallArcs, gameArcs, games };
}

/** A game that stands in several slots of one promise keeps that promise's limit by a node of its own. */
function throughLimit(network: FlowNetwork, several: Map<string, number | null>, promise: PlanPromise, game: SlotGame, to: number): number {
  const key = keyOf(promise.promiseId, game.at);
  const known = several.get(key);
  if (known === undefined || game.room === Infinity) return to;
  if (known !== null) return known;
  const node = network.addNode();
  network.startBy(network.addArc(node, to, game.room));
  several.set(key, node);
  return node;
}

function gamesOfSeveralSlots(season: OpenSeason): Map<string, number | null> {
  const seen = new Set<string>();
  const several = new Map<string, number | null>();
  for (const { promise, games } of season.slots) {
    for (const { at } of games) {
      const key = keyOf(promise.promiseId, at);
      if (seen.has(key)) several.set(key, null);
      seen.add(key);
    }
  }
  return several;
}

/** What is still to come after a bucket costs by how far it is from an even pace. */
function nextBucket(network: FlowNetwork, node: number, reads: number, toComeSixtieths: number): number {
  const next = network.addNode();
  const below = Math.max(0, Math.min(reads, Math.floor(toComeSixtieths / PACE_PER_READ)));
  if (below > 0) network.addArc(node, next, below, 0, 0, 0, -PACE_PER_READ);
  const part = toComeSixtieths - below * PACE_PER_READ;
  if (below < reads && part > 0 && part < PACE_PER_READ) network.addArc(node, next, 1, 0, 0, 0, PACE_PER_READ - 2 * part);
  network.startBy(network.addArc(node, next, UNLIMITED, 0, 0, 0, PACE_PER_READ));
  return next;
}

interface GameStep {
  readonly reads: number;
  readonly aloud: number;
  readonly leaving: number;
  readonly shape: number;
}

/** What a missing read under the floor counts beside one more than a game's even share. */
const FLOOR = 8;

/** The cost of the first, the second … read at a game, those of one cost together: never falling, at any level. */
function gameSteps(slot: OpenSlot, game: SlotGame, share: number, wishes: PlanWishes): GameStep[] {
  const { promise } = slot;
  const room = Math.min(game.room, slot.reads);
  const own = Math.max(0, share - game.fixed);
  const floor = promise.leastPerGame > (promise.mostPerGame ?? Infinity) ? 0 : Math.max(0, promise.leastPerGame - game.fixed);
  const loose = wishes.keeps === 'whatIsPlaced' ? game.loose : 0;
  const aloud = game.fixed === 0 && game.isAloud ? 1 : 0;
  const edges = [...new Set([aloud, floor, loose, own, own + 1, room])].filter((edge) => edge > 0 && edge <= room).sort((one, other) => one - other);
  return edges.map((until, index) => {
    const from = edges[index - 1] ?? 0;
    const beyond = from < own ? 0 : from === own ? (share === 0 ? 1 : 2) : 3;
    return { reads: until - from, aloud: from < aloud ? -1 : 0, leaving: from < loose ? -1 : 0, shape: beyond - (from < floor ? FLOOR : 0) };
  });
}
