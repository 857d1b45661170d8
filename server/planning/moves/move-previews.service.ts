import { Inject, Injectable } from '@nestjs/common';
import type { PlanSeason } from '../../domain/planning/season.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { PlanSolver } from '../solver/plan-solver.service.ts';
import type { MovePreview, MovePreviewDto } from './move-preview.dto.ts';
import { MoveTrying } from './move-trying.service.ts';
import { seasonShortfall } from './season-shortfall.ts';
import type { PlannedSeason } from './season-shortfall.ts';

/** In places alone a plan of a department's season takes well under a second. */
const SECONDS = 10;

/** What moving a game does to every contract, before anybody confirms it: it is done in a unit that is rolled back. */
@Injectable()
export class MovePreviews {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(MoveTrying) private readonly trying: MoveTrying,
    @Inject(PlanSolver) private readonly solver: PlanSolver,
  ) {}

  /** @throws Refused as the move itself */
  async of(gameId: string, form: MovePreviewDto): Promise<MovePreview> {
    const { view, seasonBefore, seasonAfter } = await this.work.tryOut(() => this.trying.try(gameId, form));
    const [before, after] = await Promise.all([this.planned(seasonBefore), this.planned(seasonAfter)]);
    return { ...view, shortfall: seasonShortfall(before, after) };
  }

  private async planned(season: PlanSeason): Promise<PlannedSeason> {
    return { season, plan: await this.solver.solve(season, { keeps: 'nothing' }, { seconds: SECONDS, company: false }) };
  }
}
