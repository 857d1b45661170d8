import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../access/department.service.ts';
import type { Day } from '../domain/day.ts';
import { JOURNALS } from '../domain/ledger/account.ts';
import { bookingDayOf, checkMoneyDay, moneyDays } from '../domain/ledger/booking-day.ts';
import type { Posting } from '../domain/ledger/posting.ts';
import { dayAt } from '../domain/instant.ts';
import type { Instant } from '../domain/instant.ts';
import { newId } from '../platform/database/ids.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { BookingLock } from './booking-lock.ts';
import type { LedgerEntry } from './ledger-entry.entity.ts';
import type { LedgerEvent } from './ledger-event.entity.ts';
import type { PostingRow } from './posting.entity.ts';

/** An event to be booked: what happened, what caused it, and what it moves. */
export interface EventToBook {
  id?: string;
  /** the kind of thing that caused it (`night`, `invoice`, `payment`, `contract` …) and its id */
  cause: string;
  causeId: string | null;
  occurredOn: Day;
  happening: unknown;
  postings: readonly Posting[];
  contractId?: string | null;
  termId?: string | null;
  sellerId?: string | null;
  /** its place among the events of its term */
  place?: number | null;
  takesBackEventId?: string | null;
}

const ROWS_AT_ONCE = 500;

/** The books: knows accounts, amounts and a cause's id, never a contract. */
@Injectable()
export class LedgerService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(BookingLock) private readonly lock: BookingLock,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  async closedMonths(): Promise<Day[]> {
    const rows = await this.work.sql<{ month: Day }>('select month from month_close where department_id = $1');
    return rows.map((row) => row.month);
  }

  async book(event: EventToBook): Promise<string> {
    const [id] = await this.bookAll([event]);
    return id!;
  }

  /** Writes events with their entries and postings: a few statements, however many events. Answers the ids in order. */
  async bookAll(events: readonly EventToBook[]): Promise<string[]> {
    if (events.length === 0) return [];
    await this.checkDays(events);
    // The lock first: a month that closes meanwhile is then seen as closed.
    await this.lock.together();
    const closed = await this.closedMonths();
    const rows = events.map((event) => this.eventRow(event, bookingDayOf(event.occurredOn, closed)));
    const entries: Partial<LedgerEntry>[] = [];
    const postings: Partial<PostingRow>[] = [];
    events.forEach((event, place) => {
      const row = rows[place]!;
      for (const journal of JOURNALS) {
        const moved = event.postings.filter((posting) => posting.journal === journal);
        if (moved.length === 0) continue;
        const entryId = newId();
        entries.push({ id: entryId, eventId: row.id!, journal });
        postings.push(...moved.map((posting) => postingRow(posting, entryId, row)));
      }
    });
    await this.write('ledger_event', rows);
    await this.write('ledger_entry', entries);
    await this.write('posting', postings);
    return rows.map((row) => row.id!);
  }

  /** In parts, because a statement takes so many values and no more. */
  private async write(table: string, rows: readonly object[]): Promise<void> {
    for (let from = 0; from < rows.length; from += ROWS_AT_ONCE) {
      await this.work.add(table, rows.slice(from, from + ROWS_AT_ONCE) as ({ id: string } & Record<string, unknown>)[]);
    }
  }

  /** Money is never dated years away from today; what was read is dated as it was. */
  private async checkDays(events: readonly EventToBook[]): Promise<void> {
    const days = events.filter((event) => event.postings.some((posting) => posting.journal === 'money')).map((event) => event.occurredOn);
    if (days.length === 0) return;
    const { zone, fiscalYearStartsInMonth } = await this.departments.here();
    const bounds = moneyDays(dayAt(new Date().toISOString() as Instant, zone), fiscalYearStartsInMonth);
    for (const day of days) checkMoneyDay(day, bounds);
  }

  private eventRow(event: EventToBook, bookedOn: Day): Partial<LedgerEvent> {
    return {
      id: event.id ?? newId(),
      cause: event.cause,
      causeId: event.causeId,
      contractId: event.contractId ?? null,
      termId: event.termId ?? null,
      sellerId: event.sellerId ?? null,
      place: event.place ?? null,
      happening: event.happening,
      occurredOn: event.occurredOn,
      bookedOn,
      takesBackEventId: event.takesBackEventId ?? null,
      recordedByPersonId: this.work.scope.personId,
    };
  }
}

function postingRow(posting: Posting, entryId: string, event: Partial<LedgerEvent>): Partial<PostingRow> {
  return {
    id: newId(),
    entryId,
    eventId: event.id!,
    journal: posting.journal,
    fromAccount: posting.from,
    toAccount: posting.to,
    amount: posting.amount,
    contractId: posting.contractId ?? event.contractId ?? null,
    termId: event.termId ?? null,
    commitmentId: posting.commitmentId ?? null,
    gameId: posting.gameId ?? null,
    sellerId: event.sellerId ?? null,
    invoiceId: posting.invoiceId ?? null,
    unappliedId: posting.unappliedId ?? null,
    occurredOn: event.occurredOn!,
    effectiveOn: event.bookedOn!,
  };
}
