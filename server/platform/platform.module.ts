import { Global, Module } from '@nestjs/common';
import type { DynamicModule } from '@nestjs/common';
import { CONFIG } from './config/config.ts';
import type { Config } from './config/config.ts';
import { HealthController } from './health/health.controller.ts';
import { IdempotencyService } from './http/idempotency.service.ts';
import { RefusalPagesController } from './http/pages.controller.ts';
import { LOG } from './log/log.ts';
import type { Log } from './log/log.ts';

/** What every room stands on and what knows no business noun. */
@Global()
@Module({})
export class PlatformModule {
  static with(config: Config, log: Log): DynamicModule {
    return {
      module: PlatformModule,
      controllers: [HealthController, RefusalPagesController],
      providers: [{ provide: CONFIG, useValue: config }, { provide: LOG, useValue: log }, IdempotencyService],
      exports: [CONFIG, LOG, IdempotencyService],
    };
  }
}
