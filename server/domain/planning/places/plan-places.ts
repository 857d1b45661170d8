import { minCostFlow } from '../flow/min-cost-flow.ts';
import type { PlacedRead, PlanRead, PlanSeason, PlanWishes, SeasonPlan, Shortfall } from '../season.ts';
import { bottlenecks } from './bottlenecks.ts';
import { divideKinds } from './divided-kinds.ts';
import type { Divided } from './divided-kinds.ts';
import type { SplitRooms } from './game-nodes.ts';
import { movesOf } from './moves-of-plan.ts';
import { keyOf, openSeason } from './open-season.ts';
import type { OpenSeason } from './open-season.ts';
import { placeNumbers } from './place-numbers.ts';
import { LEVEL, placesNetwork } from './places-network.ts';
import type { PlacesNetwork } from './places-network.ts';
import { windowsOfGame } from './windows-of-game.ts';
import type { GameReads, WindowReads } from './windows-of-game.ts';

/**
 * The best plan of a season in places, by an exact flow. First as little as possible is left without a place, by priority
 * (`WEIGHT_OF_PRIORITY`); then as many games as possible that were promised aloud have their read; then, with
 * `keeps: 'whatIsPlaced'`, as few reads as possible leave their game; then the pace is as even as it can be, after each
 * bucket of each slot; then floors and even shares of single games. Last, reads keep their window where they can.
 * The same season gives the same plan in whatever order promises and placed reads are listed. Common practice, no source.
 */
export function planPlaces(season: PlanSeason, wishes: PlanWishes): SeasonPlan {
  const open = openSeason(season);
  const { best, bound } = divideKinds((splits) => solve(open, wishes, splits), (kind) => open.kindRoom.get(kind)!);
  const reads = [...open.fixed.map(({ promiseId, gameId, windowKey, place }) => ({ promiseId, gameId, windowKey, place })), ...best.reads];
  return {
    reads,
    shortfall: best.shortfall,
    shortfallReads: best.shortfall.reduce((sum, one) => sum + one.reads, 0),
    weightedShortfall: best.weightedShortfall,
    bound,
    isProven: best.weightedShortfall === bound,
    by: 'places',
    bottlenecks: bottlenecks(open, best.places, best.flow),
    ...movesOf(open.loose, best.reads),
  };
}

interface Solved extends Divided {
  readonly places: PlacesNetwork;
  readonly flow: Float64Array;
  readonly reads: readonly PlanRead[];
  readonly shortfall: readonly Shortfall[];
}

function solve(open: OpenSeason, wishes: PlanWishes, splits: SplitRooms): Solved {
  const places = placesNetwork(open, wishes, splits);
  const { flow, costs } = minCostFlow(places.network);
  const atGame = readsByGame(open, places, flow);
  const loose = looseByGame(open);
  const reads: PlanRead[] = [];
  const undecided = new Map<string, ReadonlyMap<string, number>>();
  open.games.forEach((game, at) => {
    const here = [...atGame[at]!.values()];
    if (here.length === 0) return;
    const { gameId } = game.game;
    const inWindows = windowsOfGame(game, here, loose[at]!);
    for (const [kind, rooms] of undecidedKinds(places, at, gameId, here, inWindows)) undecided.set(kind, rooms);
    reads.push(...placeNumbers(gameId, inWindows, open.taken, loose[at]!));
  });
  const shortfall = open.slots.flatMap(({ promise, slot }, index) => {
    const missing = flow[places.shortfallArcs[index]!]!;
    return missing === 0 ? [] : [{ promiseId: promise.promiseId, slot, reads: missing }];
  });
  return { places, flow, reads, shortfall, weightedShortfall: costs[LEVEL.shortfall]!, undecided };
}

function readsByGame(open: OpenSeason, places: PlacesNetwork, flow: Float64Array): Map<string, GameReads>[] {
  const atGame = open.games.map(() => new Map<string, GameReads>());
  for (const { slot, game, firstArc, untilArc } of places.gameArcs) {
    let reads = 0;
    for (let arc = firstArc; arc < untilArc; arc += 1) reads += flow[arc]!;
    if (reads === 0) continue;
    const { promise } = open.slots[slot]!;
    const known = atGame[game]!.get(promise.promiseId)?.reads ?? 0;
    atGame[game]!.set(promise.promiseId, { promise, reads: known + reads });
  }
  return atGame;
}

function looseByGame(open: OpenSeason): PlacedRead[][] {
  const index = new Map(open.games.map(({ game }, at) => [game.gameId, at]));
  const loose = open.games.map((): PlacedRead[] => []);
  for (const read of open.loose) loose[index.get(read.gameId) ?? -1]?.push(read);
  return loose;
}

/** Where reads find no window although the flow let them in, rooms of kinds have let in reads by windows of others: as they could be used. */
function undecidedKinds(places: PlacesNetwork, at: number, gameId: string, here: readonly GameReads[], inWindows: readonly WindowReads[]): Map<string, Map<string, number>> {
  const count = (reads: readonly GameReads[]): number => reads.reduce((sum, one) => sum + one.reads, 0);
  const undecided = new Map<string, Map<string, number>>();
  if (count(inWindows) === count(here)) return undecided;
  for (const kindId of new Set(here.map(({ promise }) => promise.readKindId))) {
    const classes = places.games.sharedRooms.get(keyOf(kindId, gameId));
    if (classes === undefined) continue;
    const ofKind = inWindows.filter(({ promise }) => promise.readKindId === kindId);
    undecided.set(keyOf(kindId, gameId), new Map(classes.map((key) => [key, count(ofKind.filter(({ promise }) => places.games.classKey(promise, at) === key))])));
  }
  return undecided;
}
