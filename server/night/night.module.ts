import { Module } from '@nestjs/common';
import { PacketModule } from '../packet/packet.module.ts';
import { PlanningModule } from '../planning/planning.module.ts';
import { SponsorshipModule } from '../sponsorship/sponsorship.module.ts';
import { Bundles } from './bundle.service.ts';
import { DeskController } from './desk.controller.ts';
import { LogBatch } from './log-batch.service.ts';
import { NightBooking } from './night-booking.service.ts';
import { NightContexts } from './night-context.service.ts';
import { NightTableController } from './night.controller.ts';
import { NightCounting } from './night-counting.service.ts';
import { NightLog } from './night-log.service.ts';
import { NightTableService } from './night.service.ts';
import { TableController } from './table.controller.ts';
import { TableLinkController } from './table-link.controller.ts';
import { TableLinks } from './table-link.service.ts';

@Module({
  imports: [PacketModule, PlanningModule, SponsorshipModule],
  controllers: [NightTableController, DeskController, TableController, TableLinkController],
  providers: [NightLog, LogBatch, NightContexts, NightCounting, NightBooking, NightTableService, Bundles, TableLinks],
})
export class NightModule {}
