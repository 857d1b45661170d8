import { Inject, Injectable } from '@nestjs/common';
import { refuse } from '../../domain/refusals.ts';
import { Amendments } from '../closing/amendment.service.ts';
import { LogBatch } from './log-batch.service.ts';
import type { EntryResult, LogBatchDto } from './log.dto.ts';
import type { LockedNight } from './night-log.service.ts';

/** Entries that the office brings to a night: into its log while it is open, as an amendment after its sign-off. */
@Injectable()
export class LateEntries {
  constructor(
    @Inject(LogBatch) private readonly batch: LogBatch,
    @Inject(Amendments) private readonly amendments: Amendments,
  ) {}

  /** @param night locked */
  async take(night: LockedNight, form: LogBatchDto, reason: string | null): Promise<EntryResult[]> {
    if (!night.isSignedOff) return this.batch.take(night, form, false);
    if (reason === null) refuse('amendment-without-reason', {}, { reason: 'is missing' });
    return (await this.amendments.amend(night.id, { ...form, reason })).results;
  }
}
