import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../access/department.service.ts';
import type { Day } from '../domain/day.ts';
import { firstOfMonth } from '../domain/day.ts';
import { assertMayClose } from '../domain/ledger/month.ts';
import { refuse } from '../domain/refusals.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { BookingLock } from './booking-lock.ts';
import { LedgerService } from './ledger.service.ts';
import { MonthClose } from './month-close.entity.ts';
import type { LateNight } from './month-close.entity.ts';

/** Closes months, for good: what comes in later for one of their days is booked on the first open day and keeps its own. */
@Injectable()
export class MonthClosing {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(BookingLock) private readonly lock: BookingLock,
    @Inject(LedgerService) private readonly ledger: LedgerService,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  /** The month of the first event; null while the books are empty. */
  async firstMonth(): Promise<Day | null> {
    const [row] = await this.work.sql<{ first: Day | null }>('select min(booked_on) as first from ledger_event where department_id = $1');
    return row?.first ? firstOfMonth(row.first) : null;
  }

  /**
   * Waits for everybody who is booking, then looks at what is late, then closes.
   *
   * @param lateNightsOf the nights of the month that are not signed off, asked once nobody books any more
   * @throws Refused as `assertMayClose` does, and `nights-not-signed-off` while their list is not acknowledged
   */
  async close(month: Day, acknowledgesNights: boolean, lateNightsOf: () => Promise<LateNight[]>): Promise<void> {
    await this.lock.alone();
    const [today, firstMonth, closed] = [await this.departments.today(), await this.firstMonth(), await this.ledger.closedMonths()];
    assertMayClose({ month, today, firstMonth, closed });
    const lateNights = await lateNightsOf();
    if (lateNights.length > 0 && !acknowledgesNights) refuse('nights-not-signed-off', { nights: lateNights.length === 1 ? 'One night of this month is' : `${lateNights.length} nights of this month are` });
    await this.work.insert(MonthClose, { month, lateNights, closedByPersonId: this.work.personId });
  }
}
