import type { PlanSeason } from '../season.ts';

/** Where the reads of a sponsor stand that are still to be given. */
export interface PlanTotal {
  readonly sponsorId: string;
  readonly sponsorName: string;
  /** reads still to be given at the games to come, replacements and room for open offers included */
  readonly owed: number;
  /** of these, reads that have a place */
  readonly planned: number;
  /** of these, reads that have none */
  readonly atRisk: number;
}

/** Totals by sponsor, in the order of their names. */
export function totalsOf(season: PlanSeason): PlanTotal[] {
  const planned = new Map<string, number>();
  for (const read of season.placed) planned.set(read.promiseId, (planned.get(read.promiseId) ?? 0) + 1);
  const totals = new Map<string, PlanTotal>();
  for (const promise of season.promises) {
    const owed = promise.slots.reduce((sum, slot) => sum + slot.reads, 0);
    const has = Math.min(owed, planned.get(promise.promiseId) ?? 0);
    const before = totals.get(promise.sponsorId) ?? { owed: 0, planned: 0, atRisk: 0 };
    totals.set(promise.sponsorId, {
      sponsorId: promise.sponsorId, sponsorName: promise.sponsorName, owed: before.owed + owed, planned: before.planned + has, atRisk: before.atRisk + owed - has,
    });
  }
  return [...totals.values()].sort((one, other) => (one.sponsorName < other.sponsorName ? -1 : one.sponsorName > other.sponsorName ? 1 : 0));
}

/** The totals of all sponsors together, in reads. */
export function totalOfAll(totals: readonly PlanTotal[]): Pick<PlanTotal, 'owed' | 'planned' | 'atRisk'> {
  const sum = (field: 'owed' | 'planned' | 'atRisk'): number => totals.reduce((all, total) => all + total[field], 0);
  return { owed: sum('owed'), planned: sum('planned'), atRisk: sum('atRisk') };
}
