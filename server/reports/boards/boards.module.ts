import { Module } from '@nestjs/common';
import { NightModule } from '../../night/night.module.ts';
import { PacketModule } from '../../packet/packet.module.ts';
import { PlanningModule } from '../../planning/planning.module.ts';
import { SeasonModule } from '../../season/season.module.ts';
import { BoardSeasons } from './board-season.service.ts';
import { BoardsController } from './boards.controller.ts';
import { GlanceService } from './glance.service.ts';

@Module({
  imports: [SeasonModule, PlanningModule, PacketModule, NightModule],
  controllers: [BoardsController],
  providers: [BoardSeasons, GlanceService],
})
export class BoardsModule {}
