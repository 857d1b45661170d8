import { Module } from '@nestjs/common';
import { PlanningModule } from '../planning/planning.module.ts';
import { SponsorshipModule } from '../sponsorship/sponsorship.module.ts';
import { LogBatch } from './log-batch.service.ts';
import { NightBooking } from './night-booking.service.ts';
import { NightContexts } from './night-context.service.ts';
import { NightTableController } from './night.controller.ts';
import { NightCounting } from './night-counting.service.ts';
import { NightLog } from './night-log.service.ts';
import { NightTableService } from './night.service.ts';

@Module({
  imports: [PlanningModule, SponsorshipModule],
  controllers: [NightTableController],
  providers: [NightLog, LogBatch, NightContexts, NightCounting, NightBooking, NightTableService],
})
export class NightModule {}
