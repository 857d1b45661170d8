import { mayStandApart } from './rivals.ts';
import type { Cell, CompanySeason } from './company-season.ts';

/** What is still free while reads are put one after the other, places, seconds and company together. Whole numbers only. */
export class CompanyRoom {
  /** reads by cell */
  readonly counts: Int32Array;
  private readonly used: { places: number; seconds: number; groups: Map<string, number> }[];
  private readonly inGame: Map<number, number>[];
  private readonly inSlot: Map<number, number>[];

  constructor(private readonly of: CompanySeason) {
    this.counts = new Int32Array(of.cells.length);
    this.used = of.sites.map(() => ({ places: 0, seconds: 0, groups: new Map() }));
    this.inGame = of.season.games.map(() => new Map());
    this.inSlot = of.season.promises.map(() => new Map());
    of.cells.forEach((cell, index) => {
      if (cell.staying > 0) this.put(index, cell.staying);
    });
  }

  put(index: number, reads: number): void {
    const cell = this.of.cells[index]!;
    const promise = this.of.season.promises[cell.promise]!;
    const used = this.used[cell.site]!;
    const game = this.inGame[this.of.sites[cell.site]!.game]!;
    this.counts[index]! += reads;
    used.places += reads;
    used.seconds += reads * promise.seconds;
    if (promise.placeGroup !== null) used.groups.set(promise.placeGroup, (used.groups.get(promise.placeGroup) ?? 0) + reads);
    game.set(index, (game.get(index) ?? 0) + reads);
    if (game.get(index) === 0) game.delete(index);
    const slots = this.inSlot[cell.promise]!;
    slots.set(cell.slot, (slots.get(cell.slot) ?? 0) + reads);
  }

  lacking(promise: number, slot: number): number {
    return Math.max(0, this.of.season.promises[promise]!.slots[slot]!.reads - (this.inSlot[promise]!.get(slot) ?? 0));
  }

  readsInGame(promise: number, game: number): number {
    let reads = 0;
    for (const [index, count] of this.inGame[game]!) if (this.of.cells[index]!.promise === promise) reads += count;
    return reads;
  }

  /** One more read fits here beside all that is there. */
  hasRoom(index: number): boolean {
    const cell = this.of.cells[index]!;
    if (cell.slot === -1 || this.counts[index]! >= cell.most || this.lacking(cell.promise, cell.slot) === 0) return false;
    return this.fitsWindow(cell) && this.fitsGame(cell);
  }

  private fitsWindow(cell: Cell): boolean {
    const site = this.of.sites[cell.site]!;
    const used = this.used[cell.site]!;
    const { seconds, placeGroup } = this.of.season.promises[cell.promise]!;
    if (used.places >= site.places || used.seconds + seconds > site.seconds) return false;
    return placeGroup === null || (used.groups.get(placeGroup) ?? 0) < (site.groupPlaces[placeGroup] ?? Infinity);
  }

  private fitsGame(cell: Cell): boolean {
    const { season, sites, cells } = this.of;
    const { game, order } = sites[cell.site]!;
    const promise = season.promises[cell.promise]!;
    if (promise.mostPerGame !== null && this.readsInGame(cell.promise, game) >= promise.mostPerGame) return false;
    const ofKind = new Set([promise.sponsorId]);
    let limit = promise.sponsorsPerGame;
    for (const index of this.inGame[game]!.keys()) {
      const other = season.promises[cells[index]!.promise]!;
      if (!mayStandApart(promise, other, Math.abs(sites[cells[index]!.site]!.order - order))) return false;
      if (other.readKindId !== promise.readKindId) continue;
      ofKind.add(other.sponsorId);
      limit = Math.min(limit, other.sponsorsPerGame);
    }
    return ofKind.size <= limit;
  }
}
