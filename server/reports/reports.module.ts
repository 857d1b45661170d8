import { Module } from '@nestjs/common';
import { BillingModule } from '../billing/billing.module.ts';
import { MakegoodsModule } from '../makegoods/makegoods.module.ts';
import { PacketModule } from '../packet/packet.module.ts';
import { SeasonModule } from '../season/season.module.ts';
import { SponsorshipModule } from '../sponsorship/sponsorship.module.ts';
import { LedgerModule } from '../ledger/ledger.module.ts';
import { BoardsModule } from './boards/boards.module.ts';
import { IncomeBoardModule } from './boards/income-board.module.ts';
import { RenewalsBoardModule } from './boards/renewals-board.module.ts';
import { DocumentsController } from './documents/documents.controller.ts';
import { DocumentsService } from './documents/documents.service.ts';
import { FulfillmentModule } from './fulfillment/fulfillment.module.ts';
import { HomeController } from './home.controller.ts';
import { HomeProofService } from './home-proof.service.ts';
import { HomeService } from './home.service.ts';
import { MoneyReportsModule } from './money/money-reports.module.ts';
import { MonthsController } from './months/months.controller.ts';
import { MonthsService } from './months/months.service.ts';
import { PerformanceModule } from './performance/performance.module.ts';
import { RecentService } from './recent.service.ts';
import { SponsorPageModule } from './sponsor-page/sponsor-page.module.ts';

@Module({
  imports: [
    LedgerModule, SeasonModule, SponsorshipModule, PacketModule, BillingModule, MakegoodsModule, MoneyReportsModule,
    BoardsModule, IncomeBoardModule, RenewalsBoardModule,
    FulfillmentModule,
    PerformanceModule,
    SponsorPageModule,
  ],
  controllers: [DocumentsController, HomeController, MonthsController],
  providers: [DocumentsService, HomeProofService, HomeService, RecentService, MonthsService],
})
export class ReportsModule {}
