import { grouped } from './laid-plan.ts';
import type { LaidPlan, LaidRead } from './laid-plan.ts';
import type { PlanFault } from './plan-fault.ts';
import type { PlanPromise } from './season.ts';

/** Reads at games nobody promised them for, and more reads than a slot asks for. */
export function slotFaults(plan: LaidPlan): PlanFault[] {
  const byPromise = new Map<string, LaidRead[]>(plan.season.promises.map((promise) => [promise.promiseId, []]));
  for (const reads of plan.byGame.values()) for (const read of reads) byPromise.get(read.promiseId)?.push(read);
  return plan.season.promises.flatMap((promise) => slotsOfPromise(plan, promise, byPromise.get(promise.promiseId)!));
}

function slotsOfPromise(plan: LaidPlan, promise: PlanPromise, reads: readonly LaidRead[]): PlanFault[] {
  const slotsOf = new Map<string, number[]>();
  promise.slots.forEach((slot, index) => {
    for (const gameId of slot.gameIds) slotsOf.set(gameId, [...(slotsOf.get(gameId) ?? []), index]);
  });
  const { promiseId } = promise;
  const filled: LaidRead[][] = promise.slots.map(() => []);
  /** A read takes a place in one of its slots; one that is full hands a read on to another slot it may also count in. */
  const seat = (read: LaidRead, tried: Set<number>): boolean =>
    (slotsOf.get(read.gameId) ?? []).some((index) => {
      if (tried.has(index)) return false;
      tried.add(index);
      const slot = filled[index]!;
      if (slot.length < promise.slots[index]!.reads) return slot.push(read) > 0;
      const moves = slot.findIndex((one) => (slotsOf.get(one.gameId) ?? []).length > 1 && seat(one, tried));
      if (moves === -1) return false;
      slot[moves] = read;
      return true;
    });
  // What must stay is counted first, so that what could go elsewhere is what is too much.
  return reads.toSorted((one, other) => Number(other.mustStay) - Number(one.mustStay)).flatMap((read) => {
    const where = { promiseId, gameId: read.gameId, windowKey: read.windowKey, place: read.place };
    const [slot] = slotsOf.get(read.gameId) ?? [];
    if (slot === undefined) return [plan.fault('game-not-of-slot', [read], where)];
    if (seat(read, new Set())) return [];
    return [plan.fault('more-than-slot', [read], { ...where, slot, limit: promise.slots[slot]!.reads })];
  });
}

/** Limits and wishes of one game: sponsors of a kind, most and least of a promise, games promised aloud. */
export function gameFaults(plan: LaidPlan): PlanFault[] {
  const counts = grouped([...plan.byGame.values()].flat(), (read) => `${read.promiseId} ${read.gameId}`);
  const readsAt = (promiseId: string, gameId: string): LaidRead[] => counts.get(`${promiseId} ${gameId}`) ?? [];
  return [...sponsorFaults(plan), ...plan.season.promises.flatMap((promise) => [...mostFaults(plan, promise, readsAt), ...wishFaults(plan, promise, readsAt)])];
}

type ReadsAt = (promiseId: string, gameId: string) => LaidRead[];

function sponsorFaults(plan: LaidPlan): PlanFault[] {
  return [...plan.byGame].flatMap(([gameId, reads]) => {
    const kinds = grouped(reads.filter((read) => read.promise !== null), (read) => read.promise!.readKindId);
    return [...kinds.values()].flatMap((ofKind) => {
      const sponsors = new Set(ofKind.map((read) => read.promise!.sponsorId));
      const limit = Math.min(...ofKind.map((read) => read.promise!.sponsorsPerGame));
      if (sponsors.size <= limit) return [];
      const last = ofKind.findLast((read) => !read.mustStay) ?? ofKind.at(-1)!;
      return [plan.fault('sponsors-per-game', ofKind, { promiseId: last.promiseId, gameId, windowKey: last.windowKey, has: sponsors.size, limit })];
    });
  });
}

function mostFaults(plan: LaidPlan, promise: PlanPromise, readsAt: ReadsAt): PlanFault[] {
  const { promiseId, mostPerGame: limit } = promise;
  if (limit === null) return [];
  return plan.season.games.flatMap(({ gameId }) => {
    const reads = readsAt(promiseId, gameId);
    return reads.length <= limit ? [] : [plan.fault('most-per-game', reads, { promiseId, gameId, has: reads.length, limit })];
  });
}

/** A floor is only missed where the promise has reads enough to keep it at more games. */
function wishFaults(plan: LaidPlan, promise: PlanPromise, readsAt: ReadsAt): PlanFault[] {
  const { promiseId, leastPerGame: limit } = promise;
  const games = new Set(plan.season.games.map((game) => game.gameId));
  const bare = promise.pinnedGameIds.filter((gameId) => games.has(gameId) && readsAt(promiseId, gameId).length === 0);
  const faults = bare.map((gameId) => plan.fault('pinned-game-without-read', [], { promiseId, gameId, has: 0, limit: 1 }));
  if (limit === 0) return faults;
  const own = [...new Set(promise.slots.filter((slot) => slot.reads > 0).flatMap((slot) => slot.gameIds))].filter((gameId) => games.has(gameId));
  const missed = own.filter((gameId) => readsAt(promiseId, gameId).length < limit);
  const couldBeKept = Math.floor(promise.slots.reduce((sum, slot) => sum + slot.reads, 0) / limit);
  const lacking = missed.slice(0, Math.max(0, Math.min(own.length, couldBeKept) - (own.length - missed.length)));
  return [...faults, ...lacking.map((gameId) => plan.fault('least-per-game-missed', [], { promiseId, gameId, has: readsAt(promiseId, gameId).length, limit }))];
}
