import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { freePlacesIn } from '../../domain/makegoods/room-in-game.ts';
import { Refused, refuse } from '../../domain/refusals.ts';
import { covers } from '../../domain/sponsorship/covered-games.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { keysOfKind } from '../../planning/game-windows.ts';
import { NightLocks } from '../../planning/locks/night-locks.service.ts';
import { Placement } from '../../planning/placement.entity.ts';
import { PlacementService } from '../../planning/placement.service.ts';
import { PlannedGames } from '../../planning/planned-games.service.ts';
import { SeasonPlans } from '../../planning/proposals/season-plans.service.ts';
import { SignedCommitments } from '../../planning/signed-commitments.service.ts';
import type { SignedCommitment } from '../../planning/signed-commitments.service.ts';
import { gamesLeft, isNotOver } from '../shortfalls/room-left.ts';
import type { GameLeft } from '../shortfalls/room-left.ts';
import { ShortfallRows } from '../shortfalls/shortfall-rows.service.ts';
import type { KindRow } from '../shortfalls/shortfall-rows.service.ts';

/** Gives replacements their places: where places are free, on the next nights first, one a game before a second in any. */
@Injectable()
export class ReplacementPlaces {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(SeasonPlans) private readonly plans: SeasonPlans,
    @Inject(PlannedGames) private readonly games: PlannedGames,
    @Inject(SignedCommitments) private readonly commitments: SignedCommitments,
    @Inject(PlacementService) private readonly placements: PlacementService,
    @Inject(ShortfallRows) private readonly rows: ShortfallRows,
    @Inject(NightLocks) private readonly locks: NightLocks,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  /** Keeps everybody else from planning in the commitment's season, and from signing off the nights of its games, until the unit ends. First of all. */
  async hold(commitmentId: string): Promise<void> {
    const { seasonId } = (await this.commitments.byId([commitmentId])).get(commitmentId) ?? refuse('not-found');
    await this.plans.moveOn(seasonId);
    await this.work.sql(`select 1 from game where department_id = $1 and season_id = $2 and status = 'planned' order by id for no key update`, [seasonId]);
  }

  /**
   * What finds no free place is planned later, by hand or with the season.
   *
   * @returns how many have their place
   */
  async place(makegoodId: string, commitmentId: string, readKindId: string, replacements: number): Promise<number> {
    const commitment = (await this.commitments.byId([commitmentId])).get(commitmentId) ?? refuse('not-found');
    const kind = (await this.rows.kinds()).find((one) => one.readKindId === readKindId) ?? refuse('unknown-read-kind');
    const open = await this.openGames(commitment);
    let placed = 0;
    for (let before = -1; before < placed && placed < replacements; ) {
      before = placed;
      for (const game of open) if (placed < replacements && (await this.placeIn(game, commitment, kind, makegoodId))) placed += 1;
    }
    return placed;
  }

  private async openGames(commitment: SignedCommitment): Promise<GameLeft[]> {
    const games = (await this.games.ofReach([commitment.seasonId], commitment.teamIds)).filter((game) => isNotOver(game) && covers(commitment, game) && game.status === 'planned' && game.nightId !== null);
    const there = await this.rows.there(games.map((game) => game.id));
    const { settings } = await this.departments.here();
    const left = gamesLeft(games, there, await this.departments.today(), settings).filter((one) => one.isOpen);
    const open: GameLeft[] = [];
    for (const one of left) if (!(await this.locks.isLocked(one.game.nightId!))) open.push(one);
    return open;
  }

  private async placeIn(left: GameLeft, commitment: SignedCommitment, kind: KindRow, makegoodId: string): Promise<boolean> {
    const wanted = { ...kind, commitmentId: commitment.id, sponsorId: commitment.sponsorId, mostPerGame: null };
    for (const windowKey of keysOfKind(kind.windows, left.game.windows)) {
      const window = left.windows.filter((one) => one.key === windowKey);
      if (freePlacesIn(window, left.there, { ...wanted, windows: [windowKey] }) === 0) continue;
      if (!(await this.put({ commitmentId: commitment.id, gameId: left.game.id, windowKey, makegoodId }))) continue;
      left.there.push({ ...wanted, gameId: left.game.id, windowKey, isMakegood: true });
      return true;
    }
    return false;
  }

  /** Where a rule of planning says no, the read goes elsewhere. It may be moved like any other. */
  private async put(form: { commitmentId: string; gameId: string; windowKey: string; makegoodId: string }): Promise<boolean> {
    try {
      const { id } = await this.placements.add(form);
      await this.work.update(Placement, id, null, { isPinned: false });
      return true;
    } catch (failure) {
      if (failure instanceof Refused) return false;
      throw failure;
    }
  }
}
