import { Module } from '@nestjs/common';
import { NightModule } from '../../night/night.module.ts';
import { PacketModule } from '../../packet/packet.module.ts';
import { PlanningModule } from '../../planning/planning.module.ts';
import { SeasonModule } from '../../season/season.module.ts';
import { MakegoodsModule } from '../../makegoods/makegoods.module.ts';
import { FulfillmentModule } from '../fulfillment/fulfillment.module.ts';
import { AtRiskService } from './at-risk.service.ts';
import { BoardSeasons } from './board-season.service.ts';
import { BoardsController } from './boards.controller.ts';
import { GlanceService } from './glance.service.ts';
import { InventoryService } from './inventory.service.ts';

@Module({
  imports: [SeasonModule, PlanningModule, PacketModule, NightModule, MakegoodsModule, FulfillmentModule],
  controllers: [BoardsController],
  providers: [BoardSeasons, GlanceService, AtRiskService, InventoryService],
})
export class BoardsModule {}
