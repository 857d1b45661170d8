import { Module } from '@nestjs/common';
import { MakegoodsModule } from '../../makegoods/makegoods.module.ts';
import { PlanningModule } from '../../planning/planning.module.ts';
import { SponsorshipModule } from '../../sponsorship/sponsorship.module.ts';
import { FulfillmentController } from './fulfillment.controller.ts';
import { FulfillmentForecasts } from './fulfillment-forecasts.service.ts';
import { FulfillmentLedgers } from './fulfillment-ledgers.service.ts';
import { FulfillmentNights } from './fulfillment-nights.service.ts';
import { FulfillmentRows } from './fulfillment-rows.service.ts';
import { FulfillmentService } from './fulfillment.service.ts';

@Module({
  imports: [MakegoodsModule, PlanningModule, SponsorshipModule],
  controllers: [FulfillmentController],
  providers: [FulfillmentService, FulfillmentRows, FulfillmentLedgers, FulfillmentNights, FulfillmentForecasts],
  exports: [FulfillmentService],
})
export class FulfillmentModule {}
