import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import type { Day } from '../../domain/day.ts';
import { windowsOfPromise } from '../../domain/planning/facts/promise-to-plan.ts';
import { planWindows } from '../../domain/planning/facts/plan-games.ts';
import { inventoryOf } from '../../domain/reports/inventory.ts';
import type { InventoryGame, InventoryKind, InventoryReads, PlacesOfMonth } from '../../domain/reports/inventory.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { profileOfGame } from '../../planning/game-windows.ts';
import { PlannedGames } from '../../planning/planned-games.service.ts';
import type { PlannedGame } from '../../planning/planned-games.service.ts';
import { BoardSeasons } from './board-season.service.ts';
import type { InventoryView } from './board.dto.ts';
import { INVENTORY_KINDS, INVENTORY_READS, OWED_OF_KINDS } from './inventory-rows.ts';

type KindRow = InventoryKind & { readKindName: string };

/** All places of a season: given and unused in what is over, sold, held and left in what is to come. Nothing is planned for it, so it is at hand at once. */
@Injectable()
export class InventoryService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(BoardSeasons) private readonly seasons: BoardSeasons,
    @Inject(PlannedGames) private readonly games: PlannedGames,
  ) {}

  /** @throws Refused `not-found` */
  async show(asked: string | undefined): Promise<InventoryView> {
    const season = await this.seasons.chosen(asked);
    if (season.seasonId === null) return { ...season, kinds: [], months: [], unplaced: [] };
    const kinds = (await this.work.sql<KindRow>(INVENTORY_KINDS)).map((row) => ({ ...row, windows: windowsOfPromise(row.windows, []) }));
    const games = await this.ours(season.seasonId, season.today);
    const reads = await this.work.sql<InventoryReads>(INVENTORY_READS, [games.map(({ gameId }) => gameId), season.today]);
    const months: PlacesOfMonth[] = inventoryOf(games, reads, kinds);
    return { ...season, kinds: kinds.map(({ readKindId, readKindName }) => ({ readKindId, readKindName })), months, unplaced: await this.unplaced(season.seasonId) };
  }

  /** Games that are ours to fill, or were. */
  private async ours(seasonId: string, today: Day): Promise<InventoryGame[]> {
    const { settings } = await this.departments.here();
    const all = await this.games.ofSeason(seasonId);
    const isOurs = (game: PlannedGame) => game.isHome && game.announced && (game.class === 'regular' || game.class === 'conference') && game.status !== 'cancelled' && game.status !== 'postponed';
    return all.filter(isOurs).map((game) => ({
      gameId: game.id,
      playedOn: game.playedOn,
      isOver: game.isSignedOff || game.playedOn < today,
      windows: planWindows(game.windows, profileOfGame(game.sport, game.playedOn, settings.state), { halftimeSeconds: null, timeOutsReliedOn: settings.timeOutsReliedOn }),
    }));
  }

  /** Reads that are promised over a term or a game and have no place yet, by kind. */
  private async unplaced(seasonId: string): Promise<InventoryView['unplaced']> {
    const rows = await this.work.sql<InventoryView['unplaced'][number]>(OWED_OF_KINDS, [seasonId]);
    return rows.filter(({ reads }) => reads > 0);
  }
}
