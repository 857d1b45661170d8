import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../../domain/day.ts';
import { daysEarned } from '../../domain/sponsorship/days-earned.ts';
import { BookingLock } from '../../ledger/booking-lock.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { TermLedger } from '../../sponsorship/term-ledger.service.ts';

/** Terms signed by a day that have a benefit over days. */
const TERMS = `select distinct term.id from term join benefit on benefit.department_id = $1 and benefit.term_id = term.id
  where term.department_id = $1 and benefit.earns = 'overDays' and term.signed_on <= $2 order by term.id`;

/** Banners and signs earn with the days that pass; somebody has to say that they passed. */
@Injectable()
export class BenefitsOverDays {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(TermLedger) private readonly terms: TermLedger,
    @Inject(BookingLock) private readonly lock: BookingLock,
  ) {}

  /** Before a month closes: they earn through its last day. Nobody else books any more until the unit ends. */
  async earnThrough(day: Day): Promise<void> {
    const ids = (await this.work.sql<{ id: string }>(TERMS, [day])).map((row) => row.id);
    const open = await this.terms.open(ids);
    await this.lock.alone();
    const told = open.flatMap((books) => {
      const happenings = books.position ? daysEarned(books.position, day) : [];
      const because = { cause: 'contract', causeId: books.contractId, occurredOn: day };
      return happenings.length > 0 ? [{ books, told: happenings.map((happening) => ({ happening, because })) }] : [];
    });
    if (told.length > 0) await this.terms.book(told);
  }
}
