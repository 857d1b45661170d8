import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { AGING_BUCKETS, bucketOf } from '../../domain/billing/aging.ts';
import type { Day } from '../../domain/day.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { WAITING_WRITE_OFFS } from '../write-offs/waiting-write-offs.ts';
import type { WaitingWriteOffView } from '../write-offs/write-off.dto.ts';
import { FIGURES, LATE, LATE_SUMS, UNAPPLIED } from './open-items.sql.ts';
import type { LateGroupView, LateInvoiceView, OpenItemsFigures, OpenItemsView, UnappliedView } from './open-items.dto.ts';

const MOST_SHOWN = 500;

interface LateSum {
  dueOn: Day;
  count: number;
  cents: number;
}

/** What is late, what waits for its use, and what waits for the director. */
@Injectable()
export class OpenItems {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  async show(): Promise<OpenItemsView> {
    const today = await this.departments.today();
    const late = await this.work.sql<LateInvoiceView>(LATE, [today, MOST_SHOWN]);
    const sums = await this.work.sql<LateSum>(LATE_SUMS, [today]);
    const unapplied = await this.work.sql<UnappliedView>(UNAPPLIED, [MOST_SHOWN]);
    return { asOf: today, ...(await this.figures(today)), late: byAge(late, sums, today), unapplied, writeOffs: await this.writeOffs() };
  }

  /** Counts and sums alone. */
  async figures(today: Day): Promise<OpenItemsFigures> {
    const [row] = await this.work.sql<Omit<OpenItemsFigures, 'writeOffsWaiting'>>(FIGURES, [today]);
    const [waiting] = await this.work.sql<{ count: number }>(`select count(*) as count from (${WAITING_WRITE_OFFS}) as waiting`, []);
    return { ...row!, writeOffsWaiting: waiting!.count };
  }

  private async writeOffs(): Promise<WaitingWriteOffView[]> {
    return this.work.sql<WaitingWriteOffView>(`${WAITING_WRITE_OFFS} order by asked.happened_on, asked.recorded_at limit ${MOST_SHOWN}`, []);
  }
}

/** The oldest group first; a group without invoices is left out. The sums are of all invoices, though the list is cut. */
function byAge(late: readonly LateInvoiceView[], sums: readonly LateSum[], today: Day): LateGroupView[] {
  return AGING_BUCKETS.dueDay
    .map(({ name }, place) => {
      const isHere = (one: { dueOn: string }) => bucketOf({ issuedOn: one.dueOn as Day, dueOn: one.dueOn as Day }, today, 'dueDay') === place;
      const here = sums.filter(isHere);
      const sumOf = (of: (one: LateSum) => number) => here.reduce((sum, one) => sum + of(one), 0);
      return { name, count: sumOf((one) => one.count), totalCents: sumOf((one) => one.cents), invoices: late.filter(isHere) };
    })
    .filter((group) => group.count > 0)
    .reverse();
}
