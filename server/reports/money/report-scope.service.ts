import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { firstOfFiscalYear } from '../../domain/day.ts';
import type { Day } from '../../domain/day.ts';
import { refuse } from '../../domain/refusals.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';

export interface ReportSeller {
  id: string;
  name: string;
  numberPrefix: string;
}

/** Whose books a report shows, and over which days. */
@Injectable()
export class ReportScope {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  /**
   * Null where nobody's books are kept here yet.
   *
   * @throws Refused `unknown-seller`
   */
  async seller(sellerId: string | undefined): Promise<ReportSeller | null> {
    const rows = await this.work.sql<ReportSeller>(
      `select id, name, number_prefix as "numberPrefix" from seller
        where department_id = $1 and ($2::uuid is null and keeps_books_here or id = $2) order by name collate "und-x-icu" limit 1`,
      [sellerId ?? null],
    );
    return rows[0] ?? (sellerId === undefined ? null : refuse('unknown-seller'));
  }

  async day(on: string | undefined): Promise<Day> {
    return (on as Day | undefined) ?? (await this.departments.today());
  }

  /** @throws Refused `ends-before-it-starts` */
  async span(query: { from?: string; to?: string }): Promise<{ from: Day; to: Day }> {
    const to = await this.day(query.to);
    const from = (query.from as Day | undefined) ?? firstOfFiscalYear(to, (await this.departments.here()).fiscalYearStartsInMonth);
    if (to < from) refuse('ends-before-it-starts');
    return { from, to };
  }
}
