import { Module } from '@nestjs/common';
import { BillingModule } from '../billing/billing.module.ts';
import { PacketModule } from '../packet/packet.module.ts';
import { SeasonModule } from '../season/season.module.ts';
import { SponsorshipModule } from '../sponsorship/sponsorship.module.ts';
import { HomeController } from './home.controller.ts';
import { HomeService } from './home.service.ts';
import { RecentService } from './recent.service.ts';

@Module({
  imports: [SeasonModule, SponsorshipModule, PacketModule, BillingModule],
  controllers: [HomeController],
  providers: [HomeService, RecentService],
})
export class ReportsModule {}
