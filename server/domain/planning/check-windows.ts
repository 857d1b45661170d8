import type { LaidPlan, LaidRead, LaidWindow } from './laid-plan.ts';
import { placeOf } from './laid-plan.ts';
import type { PlanFault } from './plan-fault.ts';

/** What a window cannot hold, and what may not be read in it. */
export function windowFaults(plan: LaidPlan): PlanFault[] {
  return plan.windows.flatMap((laid) => [
    ...placeFaults(plan, laid), ...fullFaults(plan, laid), ...groupFaults(plan, laid), ...kindFaults(plan, laid), ...secondsFaults(plan, laid),
  ]);
}

const at = ({ game, window }: LaidWindow) => ({ gameId: game.gameId, windowKey: window.key });

function placeFaults(plan: LaidPlan, laid: LaidWindow): PlanFault[] {
  const taken = new Map<number, LaidRead>();
  return laid.reads.flatMap((read) => {
    const first = taken.get(read.place);
    if (first === undefined) taken.set(read.place, read);
    return first === undefined ? [] : [plan.fault('place-taken-twice', [first, read], { ...at(laid), promiseId: read.promiseId, other: first.promiseId, place: read.place })];
  });
}

/** Too many reads, or one on a place the window has not. */
function fullFaults(plan: LaidPlan, laid: LaidWindow): PlanFault[] {
  const { places } = laid.window;
  const beyond = laid.reads.filter((read) => read.place < 1 || read.place > places);
  const free = laid.reads.filter((read) => !read.mustStay);
  const last = beyond.find((read) => !read.mustStay) ?? free.at(-1) ?? laid.reads.at(-1)!;
  if (laid.reads.length > places) return [plan.fault('window-full', laid.reads, { ...at(laid), promiseId: last.promiseId, has: laid.reads.length, limit: places })];
  return beyond.map((read) => plan.fault('window-full', [read], { ...at(laid), promiseId: read.promiseId, place: read.place, has: laid.reads.length, limit: places }));
}

function groupFaults(plan: LaidPlan, laid: LaidWindow): PlanFault[] {
  return Object.entries(laid.window.groupPlaces).flatMap(([group, limit]) => {
    const reads = laid.reads.filter((read) => read.promise?.placeGroup === group);
    if (reads.length <= limit) return [];
    const last = reads.findLast((read) => !read.mustStay) ?? reads.at(-1)!;
    return [plan.fault('group-full', reads, { ...at(laid), promiseId: last.promiseId, group, has: reads.length, limit })];
  });
}

function kindFaults(plan: LaidPlan, laid: LaidWindow): PlanFault[] {
  const wrong = laid.reads.filter(({ promise }) => promise !== null && !promise.windows.includes(laid.window.key) && !promise.windows.includes(laid.window.kind));
  return wrong.map((read) => plan.fault('window-not-of-kind', [read], { ...at(laid), promiseId: read.promiseId, place: read.place }));
}

function secondsFaults(plan: LaidPlan, laid: LaidWindow): PlanFault[] {
  const { seconds } = laid.window;
  const has = laid.reads.reduce((sum, read) => sum + (read.promise?.seconds ?? 0), 0);
  if (seconds === null || has <= seconds) return [];
  const last = laid.reads.findLast((read) => !read.mustStay) ?? laid.reads.at(-1)!;
  return [plan.fault('seconds-exceeded', laid.reads, { ...at(laid), promiseId: last.promiseId, has, limit: seconds })];
}

/** Reads that had to stay and are gone, and nights that are locked and were touched. */
export function lockFaults(plan: LaidPlan): PlanFault[] {
  const locked = new Set(plan.season.games.filter((game) => game.isLocked).map((game) => game.gameId));
  const now = new Set(plan.listed.map(placeOf));
  const before = new Set(plan.season.placed.map(placeOf));
  const gone = plan.season.placed.filter((read) => plan.promises.has(read.promiseId) && !now.has(placeOf(read)));
  const added = plan.listed.filter((read) => locked.has(read.gameId) && !before.has(placeOf(read)));
  const where = ({ promiseId, gameId, windowKey, place }: (typeof plan.listed)[number]) => ({ promiseId, gameId, windowKey, place });
  return [
    ...gone.filter((read) => read.isFixed).map((read) => plan.fault('fixed-read-gone', [], where(read))),
    ...gone.filter((read) => !read.isFixed && locked.has(read.gameId)).map((read) => plan.fault('locked-night-touched', [], where(read))),
    ...added.map((read) => plan.fault('locked-night-touched', [], where(read))),
  ];
}
