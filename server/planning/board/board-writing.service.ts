import { Inject, Injectable } from '@nestjs/common';
import type { PlanRead, PlanSeason } from '../../domain/planning/season.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Makegood } from '../../sponsorship/makegoods/makegood.entity.ts';
import type { CopyShelf } from '../copy-shelf.ts';
import { CopyShelves } from '../copy-shelf.service.ts';
import { Placement } from '../placement.entity.ts';
import type { BoardChangeDto, BoardReadView } from './board.dto.ts';

/** A change that holds, and where it puts its read. */
export interface Laid {
  readonly change: BoardChangeDto;
  readonly id: string;
  /** as it stood before; none for an addition */
  readonly read: BoardReadView | undefined;
  readonly spot: PlanRead | null;
  /** why it may stand beside a competitor, where it does */
  readonly reason: string | null | undefined;
}

/** Writes what the board decided. Reads keep their ids, so that what hangs on them stays. */
@Injectable()
export class BoardWriting {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(CopyShelves) private readonly shelves: CopyShelves,
  ) {}

  async write(season: PlanSeason, laid: readonly Laid[]): Promise<void> {
    for (const { change, id } of laid) if (change.kind === 'remove') await this.work.remove(Placement, { id });
    await this.park(laid);
    const placed = laid.filter((one) => one.spot !== null);
    const promises = new Map(season.promises.map((promise) => [promise.promiseId, promise]));
    const shelf = await this.shelves.of(placed.map((one) => promises.get(one.spot!.promiseId)!.sponsorId), placed.map((one) => one.spot!.gameId));
    for (const one of placed) await this.lay(season, one, shelf);
    for (const { change, id } of laid) if (change.kind === 'pin' || change.kind === 'unpin') await this.work.update(Placement, id, null, { isPinned: change.kind === 'pin' });
  }

  /** Reads that change places with each other step aside first: a place is never taken twice, not even for a moment. */
  private async park(laid: readonly Laid[]): Promise<void> {
    const spot = (read: { gameId: string; windowKey: string; place: number }): string => `${read.gameId} ${read.windowKey} ${read.place}`;
    const leaves = new Map(laid.flatMap((one) => (one.change.kind === 'move' ? [[spot(one.read!), one] as const] : [])));
    const inTheWay = laid.flatMap((one) => (one.spot === null ? [] : (leaves.get(spot(one.spot)) ?? []))).filter((one) => spot(one.spot!) !== spot(one.read!));
    for (const [index, { id }] of inTheWay.entries()) await this.work.update(Placement, id, null, { place: -1 - index });
  }

  private async lay(season: PlanSeason, { change, id, spot, reason }: Laid, shelf: CopyShelf): Promise<void> {
    const { gameId, windowKey, place, promiseId } = spot!;
    const game = season.games.find((one) => one.gameId === gameId)!;
    const promise = season.promises.find((one) => one.promiseId === promiseId)!;
    const copyVersionId = shelf.versionFor({ sponsorId: promise.sponsorId, readKindId: promise.readKindId, day: game.playedOn, gameId });
    const where = { gameId, nightId: game.nightId, windowKey, place, copyVersionId };
    // Nobody but a person moves what stands beside a competitor because a person said so.
    const beside = reason ? { besideCompetitorReason: reason, isPinned: true } : { besideCompetitorReason: null };
    if (change.kind === 'move') return this.work.update(Placement, id, null, { ...where, ...beside });
    const makegood = promise.source === 'makegood' ? await this.work.one(Makegood, promiseId) : null;
    await this.work.insert(Placement, { id, ...where, isPinned: change.isPinned ?? false, ...beside, commitmentId: makegood?.commitmentId ?? promiseId, makegoodId: makegood?.id ?? null });
  }
}
