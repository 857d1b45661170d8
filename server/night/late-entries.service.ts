import { Inject, Injectable } from '@nestjs/common';
import { LogBatch } from './log-batch.service.ts';
import type { EntryResult, LogBatchDto } from './log.dto.ts';
import type { LockedNight } from './night-log.service.ts';
import { NightTableService } from './night.service.ts';

/** Entries that the office brings to a night: into its log while it is open, as an amendment after its sign-off. */
@Injectable()
export class LateEntries {
  constructor(
    @Inject(LogBatch) private readonly batch: LogBatch,
    @Inject(NightTableService) private readonly nights: NightTableService,
  ) {}

  /** @param night locked */
  async take(night: LockedNight, form: LogBatchDto, _reason: string | null): Promise<EntryResult[]> {
    if (!night.isSignedOff) return this.batch.take(night, form, false);
    return (await this.nights.amend(night.id, form)).results;
  }
}
