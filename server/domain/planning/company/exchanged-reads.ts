import { WEIGHT_OF_PRIORITY } from '../season.ts';
import type { CompanyRoom } from './company-room.ts';
import type { CompanySeason } from './company-season.ts';

/** Looks that are taken before the search gives up; more would keep a large season waiting. */
const MOST_LOOKS = 400_000;

/**
 * Makes room for reads that lack a place: another read of that game goes to a place it has elsewhere, or goes without where it
 * matters less. As long as that makes the shortfall smaller, and at most so many looks.
 */
export function exchangeReads(of: CompanySeason, room: CompanyRoom, slots: readonly (readonly [promise: number, slot: number])[]): void {
  const search = new Exchange(of, room);
  let isBetter = true;
  while (isBetter && search.looks < MOST_LOOKS) {
    isBetter = false;
    for (const [promise, slot] of slots) while (room.lacking(promise, slot) > 0 && search.looks < MOST_LOOKS && search.makeRoom(promise, slot)) isBetter = true;
  }
}

class Exchange {
  looks = 0;

  constructor(private readonly of: CompanySeason, private readonly room: CompanyRoom) {}

  makeRoom(promise: number, slot: number): boolean {
    for (const index of this.of.cellsOfPromise[promise]!) {
      const cell = this.of.cells[index]!;
      if (cell.slot !== slot || this.room.counts[index]! >= cell.most) continue;
      for (const other of this.othersIn(this.of.sites[cell.site]!.game, index)) {
        this.looks += 1;
        if (this.exchange(index, other)) return true;
      }
      if (this.looks >= MOST_LOOKS) return false;
    }
    return false;
  }

  /** Cells of a game with reads that may go. */
  private othersIn(game: number, but: number): number[] {
    return this.of.sitesOfGame[game]!.flatMap((site) => this.of.cellsOfSite[site]!.filter((cell) => cell !== but && this.room.counts[cell]! > this.of.cells[cell]!.staying));
  }

  private exchange(index: number, other: number): boolean {
    const { cells, cellsOfPromise } = this.of;
    const { promise, slot } = cells[other]!;
    this.room.put(other, -1);
    if (this.room.hasRoom(index)) {
      this.room.put(index, 1);
      const elsewhere = cellsOfPromise[promise]!.find((cell) => cells[cell]!.slot === slot && this.room.hasRoom(cell));
      if (elsewhere !== undefined) this.room.put(elsewhere, 1);
      if (elsewhere !== undefined || this.weightOf(cells[index]!.promise) > this.weightOf(promise)) return true;
      this.room.put(index, -1);
    }
    this.room.put(other, 1);
    return false;
  }

  private weightOf(promise: number): number {
    return WEIGHT_OF_PRIORITY[this.of.season.promises[promise]!.priority];
  }
}
