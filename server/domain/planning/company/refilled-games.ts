import { WEIGHT_OF_PRIORITY } from '../season.ts';
import type { CompanyRoom } from './company-room.ts';
import type { CompanySeason } from './company-season.ts';

type Slots = readonly (readonly [promise: number, slot: number])[];

/** Looks that are taken in all, so that a large season has few rounds and a small one many. */
const MOST_LOOKS = 600_000;
const MOST_ROUNDS = 2500;

/** Numbers that look drawn by lot and are the same each time. @source linear congruence of 2^32, Numerical Recipes, from memory */
function lots(): (below: number) => number {
  let state = 1;
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}

/**
 * Empties two games at a time of what may go and fills them anew in another order; what is no worse is kept, and where none
 * of it made the shortfall smaller the reads stay as they were. A start for the proof that is often as good as the best.
 *
 * @param bound weighted shortfall that no plan is below
 */
export function refillGames(of: CompanySeason, room: CompanyRoom, slots: Slots, bound: number): void {
  const lot = lots();
  const games = of.season.games.length;
  const missing = (): number => slots.reduce((sum, [promise, slot]) => sum + room.lacking(promise, slot) * WEIGHT_OF_PRIORITY[of.season.promises[promise]!.priority], 0);
  const first = { counts: room.counts.slice(), missing: missing() };
  const backTo = (counts: Int32Array): void => counts.forEach((count, cell) => count !== room.counts[cell] && room.put(cell, count - room.counts[cell]!));
  let least = first.missing;
  const rounds = Math.min(MOST_ROUNDS, MOST_LOOKS / (slots.length * 8));
  for (let round = 0; round < rounds && least > bound; round += 1) {
    const before = room.counts.slice();
    const cells = [...new Set([lot(games), lot(games)])].flatMap((game) => of.sitesOfGame[game]!.flatMap((site) => of.cellsOfSite[site]!));
    for (const cell of cells) room.put(cell, of.cells[cell]!.staying - room.counts[cell]!);
    const drawn = cells.map((cell) => ({ cell, order: of.season.promises[of.cells[cell]!.promise]!.priority * 300 + lot(700) }));
    for (const { cell } of drawn.toSorted((one, other) => one.order - other.order)) while (room.hasRoom(cell)) room.put(cell, 1);
    // What the two games no longer hold may have found no place there, and has one elsewhere.
    for (const [promise, slot] of slots) fillSlot(of, room, promise, slot);
    const now = missing();
    if (now <= least) least = now;
    else backTo(before);
  }
  if (least === first.missing) backTo(first.counts);
}

function fillSlot(of: CompanySeason, room: CompanyRoom, promise: number, slot: number): void {
  for (const cell of of.cellsOfPromise[promise]!) {
    if (room.lacking(promise, slot) === 0) return;
    while (of.cells[cell]!.slot === slot && room.hasRoom(cell)) room.put(cell, 1);
  }
}
