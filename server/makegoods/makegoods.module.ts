import { Module } from '@nestjs/common';
import { BillingModule } from '../billing/billing.module.ts';
import { NightModule } from '../night/night.module.ts';
import { PlanningModule } from '../planning/planning.module.ts';
import { SponsorshipModule } from '../sponsorship/sponsorship.module.ts';
import { ShortfallController } from './shortfalls/shortfall.controller.ts';
import { ShortfallRows } from './shortfalls/shortfall-rows.service.ts';
import { Shortfalls } from './shortfalls/shortfalls.service.ts';

const shortfalls = [ShortfallRows, Shortfalls];

@Module({
  imports: [SponsorshipModule, BillingModule, PlanningModule, NightModule],
  controllers: [ShortfallController],
  providers: [...shortfalls],
  exports: [...shortfalls],
})
export class MakegoodsModule {}
