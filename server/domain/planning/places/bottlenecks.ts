import { reachable } from '../flow/minimum-cut.ts';
import type { WindowKind } from '../../season/sport-rules.ts';
import type { Bottleneck, PlanPromise } from '../season.ts';
import { isOf, keyOf } from './open-season.ts';
import type { OpenSeason } from './open-season.ts';
import type { PlacesNetwork } from './places-network.ts';

/** A part of the cut: slots that lack places together, and what closes around them. */
interface Part {
  readonly slots: number[];
  /** reads of its slots beside those that stay */
  reads: number;
  /** what a promise's own limit lets out to games that are not full */
  letOut: number;
  readonly letOutAt: Set<number>;
  windowPlaces: number;
  kindPlaces: number;
  /** games of full windows and kinds */
  readonly at: Set<number>;
  /** by `game window key` */
  readonly fullWindows: Set<string>;
}

/**
 * Why reads find no place: the minimum cut of the flow, in parts that have nothing to do with each other. Over all parts,
 * `needed - places` comes to the reads that are missing.
 */
export function bottlenecks(season: OpenSeason, places: PlacesNetwork, flow: Float64Array): Bottleneck[] {
  const { network, origins, shortfallArcs } = places;
  const short = origins.filter((_, slot) => flow[shortfallArcs[slot]!]! > 0);
  if (short.length === 0) return [];
  const isReached = reachable(network, flow, short, shortfallArcs);
  const partOf = connected(places, isReached);
  const parts = new Map<number, Part>();
  origins.forEach((node, slot) => {
    if (isReached[node] === 0 || season.slots[slot]!.reads === 0) return;
    const root = partOf(node);
    const part = parts.get(root) ?? { slots: [], reads: 0, letOut: 0, letOutAt: new Set(), windowPlaces: 0, kindPlaces: 0, at: new Set(), fullWindows: new Set() };
    part.slots.push(slot);
    part.reads += season.slots[slot]!.reads;
    parts.set(root, part);
  });
  closeParts(places, isReached, (node) => parts.get(partOf(node)));
  return [...parts.values()].map((part) => told(season, part));
}

/** The nodes that are reached, in groups joined by arcs; the arcs into the shortfall join nothing. */
function connected({ network }: PlacesNetwork, isReached: Uint8Array): (node: number) => number {
  const up = Int32Array.from({ length: network.nodes }, (_, node) => node);
  const root = (node: number): number => {
    while (up[node] !== node) node = up[node] = up[up[node]!]!;
    return node;
  };
  for (let arc = 0; arc < network.arcs; arc += 1) {
    const [source, target] = [network.source[arc]!, network.target[arc]!];
    if (isReached[source] === 1 && isReached[target] === 1) up[root(source)] = root(target);
  }
  return root;
}

/** Adds the arcs that lead out of each part: all are full. */
function closeParts(places: PlacesNetwork, isReached: Uint8Array, partOf: (node: number) => Part | undefined): void {
  const { network, shortfallArcs, games, gameArcs } = places;
  const whatOf = new Map<number, (part: Part, capacity: number) => void>();
  for (const { arc, game, keys } of games.windowArcs) {
    whatOf.set(arc, (part, capacity) => {
      part.windowPlaces += capacity;
      part.at.add(game);
      for (const key of keys) part.fullWindows.add(keyOf(game, key));
    });
  }
  for (const { arc, game } of games.kinds.values()) {
    whatOf.set(arc, (part, capacity) => {
      part.kindPlaces += capacity;
      part.at.add(game);
    });
  }
  for (const { game, firstArc, untilArc, limitArc } of gameArcs) {
    const own = (part: Part, capacity: number): void => {
      part.letOut += capacity;
      part.letOutAt.add(game);
    };
    for (let arc = firstArc; arc < untilArc; arc += 1) whatOf.set(arc, own);
    if (limitArc !== -1) whatOf.set(limitArc, own);
  }
  const shortfall = new Set(shortfallArcs);
  for (let arc = 0; arc < network.arcs; arc += 1) {
    if (isReached[network.source[arc]!] === 0 || isReached[network.target[arc]!] === 1 || shortfall.has(arc)) continue;
    const part = partOf(network.source[arc]!);
    if (part !== undefined) whatOf.get(arc)?.(part, network.capacity[arc]!);
  }
}

function told(season: OpenSeason, part: Part): Bottleneck {
  const slots = part.slots.map((slot) => season.slots[slot]!);
  const promises = [...new Set(slots.map((slot) => slot.promise))];
  const stays = filledByStays(season, part, promises);
  const isOwn = part.windowPlaces + part.kindPlaces === 0 && stays.because === null;
  const because = part.windowPlaces + part.kindPlaces > 0
    ? part.kindPlaces > part.windowPlaces ? 'sponsorsPerGame' as const : 'places' as const
    : part.letOut > 0 ? 'mostPerGame' as const : (stays.because ?? 'noGames' as const);
  const at = because === 'mostPerGame' ? part.letOutAt : new Set([...part.at, ...stays.at]);
  const needed = because === 'mostPerGame' || isOwn ? part.reads : part.reads - part.letOut;
  const places = because === 'mostPerGame' || isOwn ? part.letOut : part.windowPlaces + part.kindPlaces;
  const games = [...at].sort((one, other) => one - other);
  return {
    promiseIds: promises.map((promise) => promise.promiseId),
    gameIds: games.map((game) => season.games[game]!.game.gameId),
    windowKinds: kindsOf(season, part, promises, games, because),
    needed: needed + stays.reads,
    places: places + stays.reads,
    because,
  };
}

/** Where reads that stay have filled windows or kinds, and how many of them are of these promises. */
function filledByStays(season: OpenSeason, part: Part, promises: readonly PlanPromise[]): { reads: number; at: Set<number>; because: 'places' | 'sponsorsPerGame' | null } {
  const ids = new Set(promises.map((promise) => promise.promiseId));
  const at = new Set<number>();
  let because: 'places' | 'sponsorsPerGame' | null = null;
  const index = new Map(season.games.map(({ game }, place) => [game.gameId, place]));
  for (const slot of part.slots) {
    const { promise, slot: which } = season.slots[slot]!;
    for (const gameId of promise.slots[which]!.gameIds) {
      const game = index.get(gameId);
      if (game === undefined || season.games[game]!.game.isLocked || part.letOutAt.has(game)) continue;
      const isFull = season.games[game]!.game.windows.some((window) => window.places > 0 && isOf(window, promise) && !season.games[game]!.windows.some((open) => open.key === window.key));
      const isKindFull = season.kindRoom.get(keyOf(promise.readKindId, gameId)) === 0;
      if (isFull) at.add(game);
      if (isFull) because = 'places';
      else if (isKindFull) at.add(game);
      if (isKindFull) because ??= 'sponsorsPerGame';
    }
  }
  const reads = season.fixed.filter((read) => {
    const game = index.get(read.gameId);
    return ids.has(read.promiseId) && game !== undefined && (at.has(game) || part.at.has(game));
  }).length;
  return { reads, at, because };
}

function kindsOf(season: OpenSeason, part: Part, promises: readonly PlanPromise[], games: readonly number[], because: Bottleneck['because']): WindowKind[] {
  const windows = games.flatMap((game) => season.games[game]!.game.windows.map((window) => ({ game, window })));
  const full = windows.filter(({ game, window }) => part.fullWindows.has(keyOf(game, window.key)));
  const shown = because === 'places' && full.length > 0 ? full : windows.filter(({ window }) => window.places > 0 && promises.some((promise) => isOf(window, promise)));
  return [...new Set(shown.map(({ window }) => window.kind))];
}
