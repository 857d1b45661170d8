import { Module } from '@nestjs/common';
import type { DynamicModule } from '@nestjs/common';
import { APP_FILTER, APP_GUARD, APP_INTERCEPTOR } from '@nestjs/core';
import { AccessModule, accessEntities } from './access/access.module.ts';
import { VisitorGuard } from './access/visitor.guard.ts';
import type { Config } from './platform/config/config.ts';
import { DatabaseModule } from './platform/database/database.module.ts';
import { IdempotencyRecord } from './platform/http/idempotency-record.entity.ts';
import { ProblemFilter } from './platform/http/problem.ts';
import { UnitInterceptor } from './platform/http/unit.interceptor.ts';
import type { Log } from './platform/log/log.ts';
import { JobsModule } from './platform/jobs/jobs.module.ts';
import { MailModule } from './platform/mail/mail.module.ts';
import { PlatformModule } from './platform/platform.module.ts';
import { TypesettingModule } from './platform/typesetting/typesetting.module.ts';
import { LedgerModule, ledgerEntities } from './ledger/ledger.module.ts';
import { PlanningModule, planningEntities } from './planning/planning.module.ts';
import { SponsorshipModule, sponsorshipEntities } from './sponsorship/sponsorship.module.ts';
import { BillingModule, billingEntities } from './billing/billing.module.ts';
import { SendingModule, sendingEntities } from './billing/sending/sending.module.ts';
import { PacketModule, packetEntities } from './packet/packet.module.ts';
import { MakegoodsModule, makegoodEntities } from './makegoods/makegoods.module.ts';
import { NightModule } from './night/night.module.ts';
import { performanceEntities } from './reports/performance/performance.module.ts';
import { ReportsModule } from './reports/reports.module.ts';
import { SeasonModule, seasonEntities } from './season/season.module.ts';

/** The rooms of the house, lowest first. */
@Module({})
export class AppModule {
  static with(config: Config, log: Log): DynamicModule {
    return {
      module: AppModule,
      imports: [
        PlatformModule.with(config, log),
        DatabaseModule.holding([IdempotencyRecord, ...accessEntities, ...ledgerEntities, ...seasonEntities, ...sponsorshipEntities, ...billingEntities, ...sendingEntities, ...planningEntities, ...packetEntities, ...makegoodEntities, ...performanceEntities]),
        TypesettingModule,
        JobsModule,
        MailModule,
        AccessModule,
        LedgerModule,
        SeasonModule,
        SponsorshipModule,
        BillingModule,
        SendingModule,
        PlanningModule,
        PacketModule,
        NightModule,
        MakegoodsModule,
        ReportsModule,
      ],
      providers: [
        { provide: APP_GUARD, useClass: VisitorGuard },
        { provide: APP_INTERCEPTOR, useClass: UnitInterceptor },
        { provide: APP_FILTER, useClass: ProblemFilter },
      ],
    };
  }
}
