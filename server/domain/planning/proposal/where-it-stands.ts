import type { PlanPromise, PlanSeason } from '../season.ts';

/** A promise with everything it still owes, whether or not the games to come are its own. */
export interface OwedPromise {
  readonly id: string;
  readonly source: PlanPromise['source'];
  readonly dealId: string;
  readonly sponsorId: string;
  readonly sponsorName: string;
  readonly readKindName: string;
  readonly owed: (key: string | null) => number;
}

/** Where a promise stands. Counts are reads. */
export interface PromiseStanding {
  readonly promiseId: string;
  readonly source: PlanPromise['source'];
  readonly dealId: string;
  readonly sponsorId: string;
  readonly sponsorName: string;
  readonly readKindName: string;
  /** still to be given, what is on tonight's or another night not signed off left out */
  readonly owed: number;
  /** of these, with a place that one can rely on */
  readonly planned: number;
  /** of these, without one: not placed, on a game that waits, or in a window that may not come */
  readonly atRisk: number;
}

/** Where each promise of a season stands, by the name of its sponsor. */
export function whereItStands(season: PlanSeason, owed: readonly OwedPromise[]): PromiseStanding[] {
  const places = new Map(season.games.flatMap((game) => game.windows.map((window) => [`${game.gameId} ${window.key}`, window.places] as const)));
  const slots = new Map(season.promises.map((promise) => [promise.promiseId, promise.slots]));
  const standings = owed.flatMap((promise): PromiseStanding[] => {
    const { id: promiseId, source, dealId, sponsorId, sponsorName, readKindName } = promise;
    const own = slots.get(promiseId) ?? [];
    // A line of an offer owes its reads in each of its slots; a commitment what its ledger says.
    const reads = source === 'offer' ? own.reduce((sum, slot) => sum + slot.reads, 0) : promise.owed(null);
    const sure = season.placed.filter((read) => read.promiseId === promiseId && (places.get(`${read.gameId} ${read.windowKey}`) ?? 0) >= read.place);
    const planned = Math.min(reads, sure.length);
    return reads === 0 ? [] : [{ promiseId, source, dealId, sponsorId, sponsorName, readKindName, owed: reads, planned, atRisk: reads - planned }];
  });
  return standings.sort((one, other) => (one.sponsorName < other.sponsorName ? -1 : one.sponsorName > other.sponsorName ? 1 : 0));
}
