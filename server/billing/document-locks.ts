import { Inject, Injectable } from '@nestjs/common';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';

/** Documents are never edited, so their rows cannot be locked; whoever pays or voids one takes the lock of its id. */
@Injectable()
export class DocumentLocks {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  /** Held until the unit ends; taken in the order of the ids, so that two units cannot wait for each other. */
  async take(ids: readonly string[]): Promise<void> {
    for (const id of [...new Set(ids)].sort()) {
      await this.work.sql('select pg_advisory_xact_lock(hashtextextended($1::uuid::text || $2::text, 13))', [id]);
    }
  }
}
