import { faultsOfPlan, withoutFaults } from './checked-plan.ts';
import { countsOfReads } from './company-reads.ts';
import { WEIGHT_OF_PRIORITY } from '../season.ts';
import type { Bottleneck, PlanRead, SeasonPlan, Shortfall } from '../season.ts';
import { whereOf } from './company-season.ts';
import type { CompanySeason } from './company-season.ts';
import { grouped } from './grouped.ts';

/** What is proven of every plan of a season. */
export interface Proof {
  /** weighted shortfall that no plan is below */
  readonly bound: number;
  readonly bottlenecks: readonly Bottleneck[];
}

/**
 * Reads with their places: what stays keeps its own, what lies there already keeps it too, the rest takes the lowest that are free.
 *
 * @param counts reads by cell
 */
export function readsOfCounts(of: CompanySeason, counts: ArrayLike<number>): PlanRead[] {
  const placed = grouped(of.season.placed, (read) => `${read.gameId} ${read.windowKey}`);
  const named = new Set(of.season.promises.map((promise) => promise.promiseId));
  return of.sites.flatMap((site, index) => {
    const { gameId, isLocked } = of.season.games[site.game]!;
    const here = placed.get(`${gameId} ${site.key}`) ?? [];
    const left = new Map<string, number>();
    for (const cell of of.cellsOfSite[index]!) {
      const { promiseId } = of.season.promises[of.cells[cell]!.promise]!;
      left.set(promiseId, (left.get(promiseId) ?? 0) + counts[cell]!);
    }
    const taken = new Set(here.filter((read) => !named.has(read.promiseId)).map((read) => read.place));
    const keep = (isStaying: boolean): PlanRead[] =>
      here.filter((read) => (read.isFixed || isLocked) === isStaying && (left.get(read.promiseId) ?? 0) > 0 && (isStaying || !taken.has(read.place))).map(({ promiseId, windowKey, place }) => {
        left.set(promiseId, left.get(promiseId)! - 1);
        taken.add(place);
        return { promiseId, gameId, windowKey, place };
      });
    const kept = [...keep(true), ...keep(false)];
    const free = freePlaces(taken);
    return [...kept, ...[...left].flatMap(([promiseId, reads]) => Array.from({ length: Math.max(0, reads) }, () => ({ promiseId, gameId, windowKey: site.key, place: free() })))];
  });
}

function freePlaces(taken: ReadonlySet<number>): () => number {
  let next = 0;
  return () => {
    do next += 1;
    while (taken.has(next));
    return next;
  };
}

/** A plan that passes the separate check: what breaks something is left out. */
export function checkedPlan(of: CompanySeason, counts: ArrayLike<number>, proof: Proof): SeasonPlan {
  const plan = planOfCounts(of, counts, proof);
  return faultsOfPlan(of.season, plan.reads).length === 0 ? plan : planOfCounts(of, countsOfReads(of, withoutFaults(of.season, plan.reads)), proof);
}

/** A plan with what it lacks, what it moved and what is proven. */
export function planOfCounts(of: CompanySeason, counts: ArrayLike<number>, proof: Proof): SeasonPlan {
  const shortfall = shortfallOf(of, counts);
  const weightOf = new Map(of.season.promises.map((promise) => [promise.promiseId, WEIGHT_OF_PRIORITY[promise.priority]]));
  const weightedShortfall = shortfall.reduce((sum, one) => sum + one.reads * weightOf.get(one.promiseId)!, 0);
  return {
    reads: readsOfCounts(of, counts), shortfall, weightedShortfall, by: 'company', ...movedOf(of, counts),
    shortfallReads: shortfall.reduce((sum, one) => sum + one.reads, 0),
    bound: proof.bound, isProven: weightedShortfall === proof.bound, bottlenecks: weightedShortfall === 0 ? [] : proof.bottlenecks,
  };
}

function shortfallOf(of: CompanySeason, counts: ArrayLike<number>): Shortfall[] {
  return of.season.promises.flatMap(({ promiseId, slots }, promise) => {
    const given = slots.map(() => 0);
    for (const cell of of.cellsOfPromise[promise]!) if (of.cells[cell]!.slot !== -1) given[of.cells[cell]!.slot]! += counts[cell]!;
    return slots.flatMap((slot, index) => (given[index]! >= slot.reads ? [] : [{ promiseId, slot: index, reads: slot.reads - given[index]! }]));
  });
}

/** Reads that left the game they lay in, and those that only left their window. */
function movedOf(of: CompanySeason, counts: ArrayLike<number>): { movedReads: number; movedWithinGame: number } {
  const bySite = new Map<string, number>();
  of.cells.forEach((cell, index) => {
    const where = whereOf(cell.promise, cell.site);
    bySite.set(where, (bySite.get(where) ?? 0) + counts[index]!);
  });
  const gameOf = (where: string): string => whereOf(Number(where.split(' ')[0]), of.sites[Number(where.split(' ')[1])]!.game);
  const keptIn = (before: ReadonlyMap<string, number>, now: ReadonlyMap<string, number>): number => [...before].reduce((sum, [where, reads]) => sum + Math.min(reads, now.get(where) ?? 0), 0);
  const inGames = (sites: ReadonlyMap<string, number>): Map<string, number> => {
    const games = new Map<string, number>();
    for (const [where, reads] of sites) games.set(gameOf(where), (games.get(gameOf(where)) ?? 0) + reads);
    return games;
  };
  const all = [...of.before.values()].reduce((sum, reads) => sum + reads, 0);
  const keptGame = keptIn(inGames(of.before), inGames(bySite));
  return { movedReads: all - keptGame, movedWithinGame: keptGame - keptIn(of.before, bySite) };
}
