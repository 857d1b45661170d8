import { grouped } from './laid-plan.ts';
import type { LaidPlan, LaidRead } from './laid-plan.ts';
import type { PlanFault, PlanFaultCode } from './plan-fault.ts';
import type { PlanGame, PlanPromise } from './season.ts';

const STRICTNESS = { none: 0, window: 1, next: 2, game: 3 } as const;
const FAULT_OF: Readonly<Record<'same' | 'next' | 'apart', PlanFaultCode>> = { same: 'competitors-in-window', next: 'competitors-next-to-each-other', apart: 'competitors-in-game' };

/**
 * Sponsors of one category closer to each other than either was promised: the stricter of the two holds. Windows are next to
 * each other as the game lists them.
 */
export function companyFaults(plan: LaidPlan): PlanFault[] {
  return plan.season.games.flatMap((game) => {
    const rivals = grouped((plan.byGame.get(game.gameId) ?? []).filter((read) => read.promise !== null && read.promise.categoryId !== ''), (read) => read.promise!.categoryId);
    return [...rivals.values()].flatMap((reads) => rivalsOf(plan, game, reads));
  });
}

function rivalsOf(plan: LaidPlan, game: PlanGame, reads: readonly LaidRead[]): PlanFault[] {
  if (new Set(reads.map((read) => read.promise!.sponsorId)).size < 2) return [];
  const orderOf = new Map(game.windows.map((window, order) => [window.key, order]));
  const told = new Set<string>();
  return reads.flatMap((read, index) =>
    reads.slice(0, index).flatMap((other) => {
      const apart = Math.abs(orderOf.get(read.windowKey)! - orderOf.get(other.windowKey)!);
      const code = faultOf(read.promise!, other.promise!, apart);
      const key = [read, other].map((one) => `${one.promiseId} ${one.windowKey}`).sort().join(' ');
      if (code === null || told.has(key)) return [];
      told.add(key);
      const otherWindowKey = apart === 0 ? {} : { otherWindowKey: other.windowKey };
      return [plan.fault(code, [read, other], { promiseId: read.promiseId, other: other.promiseId, gameId: game.gameId, windowKey: read.windowKey, ...otherWindowKey })];
    }),
  );
}

function faultOf(one: PlanPromise, other: PlanPromise, windowsApart: number): PlanFaultCode | null {
  if (one.sponsorId === other.sponsorId) return null;
  const strict = Math.max(STRICTNESS[one.separation], STRICTNESS[other.separation]);
  if (windowsApart === 0) return strict >= STRICTNESS.window ? FAULT_OF.same : null;
  if (windowsApart === 1) return strict >= STRICTNESS.next ? FAULT_OF.next : null;
  return strict >= STRICTNESS.game ? FAULT_OF.apart : null;
}
