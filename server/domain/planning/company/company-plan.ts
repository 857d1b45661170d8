import { faultsOfPlan, withoutFaults } from './checked-plan.ts';
import { countsOfReads } from './company-reads.ts';
import { WEIGHT_OF_PRIORITY } from '../season.ts';
import type { Bottleneck, PlanRead, SeasonPlan, Shortfall } from '../season.ts';
import type { CompanySeason } from './company-season.ts';
import { grouped } from './grouped.ts';
import { movesOf } from '../places/moves-of-plan.ts';
import { openSeason } from '../places/open-season.ts';
import { placeNumbers } from '../places/place-numbers.ts';
import type { WindowReads } from '../places/windows-of-game.ts';

/** What is proven of every plan of a season. */
export interface Proof {
  /** weighted shortfall that no plan is below */
  readonly bound: number;
  readonly bottlenecks: readonly Bottleneck[];
}

/**
 * Reads with their places: what stays keeps its own, what lies there already keeps it where no gap comes of it.
 *
 * @param counts reads by cell
 */
export function readsOfCounts(of: CompanySeason, counts: ArrayLike<number>): PlanRead[] {
  const { fixed, loose, taken } = openSeason(of.season);
  const free = of.season.games.flatMap(({ gameId }, game) => {
    const reads = of.sitesOfGame[game]!.flatMap((site) =>
      of.cellsOfSite[site]!.flatMap((index) => {
        const cell = of.cells[index]!;
        return [{ promise: of.season.promises[cell.promise]!, windowKey: of.sites[site]!.key, reads: counts[index]! - cell.staying }];
      }),
    );
    return placeNumbers(gameId, oneForEach(reads), taken, loose);
  });
  return [...fixed.map(({ promiseId, gameId, windowKey, place }) => ({ promiseId, gameId, windowKey, place })), ...free];
}

/** A promise with several slots in a window is there once. */
function oneForEach(reads: readonly WindowReads[]): WindowReads[] {
  const together = grouped(reads.filter((one) => one.reads > 0), (one) => `${one.windowKey} ${one.promise.promiseId}`);
  return [...together.values()].map((some) => ({ ...some[0]!, reads: some.reduce((sum, one) => sum + one.reads, 0) }));
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
  const reads = readsOfCounts(of, counts);
  return {
    reads, shortfall, weightedShortfall, by: 'company', ...movesOf(openSeason(of.season).loose, reads),
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
