import { Inject, Injectable } from '@nestjs/common';
import { Season } from '../../season/season.entity.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { SeasonFacts } from '../facts/season-facts.service.ts';
import type { BoardView } from './board.dto.ts';
import { BoardRows } from './board-rows.service.ts';

/** A season's plan as it lies on the board: games, windows, reads, and what is owed. */
@Injectable()
export class BoardService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(SeasonFacts) private readonly facts: SeasonFacts,
    @Inject(BoardRows) private readonly rows: BoardRows,
  ) {}

  async of(seasonId: string): Promise<BoardView> {
    const { name } = await this.work.one(Season, seasonId);
    const { season, version, today } = await this.facts.load(seasonId, { offers: 'open' });
    const inPlan = new Set(season.placed.map((read) => read.placementId));
    const gameIds = season.games.map((game) => game.gameId);
    return {
      seasonId, seasonName: name, planVersion: version, today, season,
      games: await this.rows.nights(gameIds, season.games.map((game) => game.nightId)),
      reads: (await this.rows.readsAt(gameIds)).filter((read) => inPlan.has(read.id)),
      teams: await this.rows.teams(seasonId),
    };
  }
}
