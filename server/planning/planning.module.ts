import { Module } from '@nestjs/common';
import { BillingModule } from '../billing/billing.module.ts';
import { SeasonModule } from '../season/season.module.ts';
import { SponsorshipModule } from '../sponsorship/sponsorship.module.ts';
import { BoardChanges } from './board/board-changes.service.ts';
import { BoardController } from './board/board.controller.ts';
import { BoardRows } from './board/board-rows.service.ts';
import { BoardService } from './board/board.service.ts';
import { BoardWriting } from './board/board-writing.service.ts';
import { CopyShelves } from './copy-shelf.service.ts';
import { FactsRows } from './facts/facts-rows.service.ts';
import { OtherSeasons } from './facts/other-seasons.service.ts';
import { PromisesToPlan } from './facts/promises-to-plan.service.ts';
import { SeasonFacts } from './facts/season-facts.service.ts';
import { ForecastController } from './forecast/forecast.controller.ts';
import { ForecastService } from './forecast/forecast.service.ts';
import { GamePromises } from './game-promises.service.ts';
import { MoveController } from './move.controller.ts';
import { MoveService } from './move.service.ts';
import { moveControllers, moveServices } from './moves/move-parts.ts';
import { PlacementController } from './placement.controller.ts';
import { Placement } from './placement.entity.ts';
import { PlacementService } from './placement.service.ts';
import { PlacementsFollow } from './placements-follow.service.ts';
import { PlannedGames } from './planned-games.service.ts';
import { NightLocks } from './locks/night-locks.service.ts';
import { PlanWriter } from './proposals/plan-writer.service.ts';
import { proposalControllers, proposalEntities, proposalProviders } from './proposals/proposal-parts.ts';
import { SeasonPlans } from './proposals/season-plans.service.ts';
import { promiseControllers, promiseServices } from './promise/promise-parts.ts';
import { Replacements } from './replacements.service.ts';
import { ScheduleImportController } from './schedule-import.controller.ts';
import { ScheduleImportService } from './schedule-import.service.ts';
import { SignedCommitments } from './signed-commitments.service.ts';
import { SolverModule } from './solver/solver.module.ts';
import { SpreadService } from './spread.service.ts';

export const planningEntities = [Placement, ...proposalEntities];

@Module({
  imports: [SeasonModule, SponsorshipModule, BillingModule, SolverModule],
  controllers: [ForecastController, PlacementController, MoveController, ...moveControllers, ScheduleImportController, BoardController, ...promiseControllers, ...proposalControllers],
  providers: [...proposalProviders, ...promiseServices, ForecastService, BoardService, BoardChanges, BoardRows, BoardWriting, FactsRows, OtherSeasons, PromisesToPlan, SeasonFacts, PlannedGames, SignedCommitments, CopyShelves, Replacements, PlacementService, SpreadService, GamePromises, PlacementsFollow, MoveService, ...moveServices, ScheduleImportService],
  exports: [ForecastService, PlacementService, PlannedGames, SignedCommitments, CopyShelves, SeasonFacts, SeasonPlans, NightLocks, PlanWriter, SolverModule],
})
export class PlanningModule {}
