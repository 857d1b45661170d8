import { Inject, Injectable } from '@nestjs/common';
import type { OnApplicationBootstrap, OnApplicationShutdown } from '@nestjs/common';
import { NOWHERE } from '../platform/database/scope.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { LOG } from '../platform/log/log.ts';
import type { Log } from '../platform/log/log.ts';
import { SealService } from './seal.service.ts';

const LOOK_EVERY_MILLISECONDS = 60 * 60 * 1000;

/** Once a day each department's books are sealed, in a transaction of its own; several servers may look, one seals. */
@Injectable()
export class NightlySeal implements OnApplicationBootstrap, OnApplicationShutdown {
  private clock: NodeJS.Timeout | null = null;

  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(SealService) private readonly seals: SealService,
    @Inject(LOG) private readonly log: Log,
  ) {}

  onApplicationBootstrap(): void {
    this.clock = setInterval(() => void this.look(), LOOK_EVERY_MILLISECONDS);
    this.clock.unref();
  }

  onApplicationShutdown(): void {
    if (this.clock) clearInterval(this.clock);
  }

  private async look(): Promise<void> {
    try {
      const departments = await this.work.runAs(NOWHERE, () => this.work.sqlEverywhere<{ id: string }>('select id from department order by id'));
      for (const { id } of departments) await this.work.runAs({ departmentId: id, personId: null }, () => this.seals.sealWhenDue());
    } catch (error) {
      this.log.error({ error: String(error) }, 'the books could not be sealed; the next look tries again');
    }
  }
}
