import { Inject, Injectable } from '@nestjs/common';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';

const KEY = `hashtextextended($1::uuid::text, 19)`;

/**
 * Whoever books holds it together with others, whoever closes a month holds it alone, each until the unit ends. So what was
 * booked into a month is there before the month closes, and what comes after reads that it is closed.
 */
@Injectable()
export class BookingLock {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async together(): Promise<void> {
    await this.work.sql(`select pg_advisory_xact_lock_shared(${KEY})`);
  }

  async alone(): Promise<void> {
    await this.work.sql(`select pg_advisory_xact_lock(${KEY})`);
  }
}
