import { Inject, Injectable } from '@nestjs/common';
import { dayAt, isZone } from '../domain/instant.ts';
import type { Instant } from '../domain/instant.ts';
import type { Day } from '../domain/day.ts';
import { refuse } from '../domain/refusals.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { DEFAULT_SETTINGS } from './department.dto.ts';
import type { ChangeDepartmentDto, DepartmentView } from './department.dto.ts';

const SELECT = `select id, name, zone, currency, locale, fiscal_year_starts_in_month as "fiscalYearStartsInMonth",
  school_year_starts_in_month as "schoolYearStartsInMonth", settings, version from department where id = $1`;

@Injectable()
export class DepartmentService {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  /** The department of this unit of work. */
  async here(): Promise<DepartmentView> {
    const [row] = await this.work.sql<DepartmentView>(SELECT);
    if (!row) return refuse('not-found');
    return { ...row, settings: { ...DEFAULT_SETTINGS, ...row.settings } };
  }

  /** Today by the department's own calendar. */
  async today(): Promise<Day> {
    return dayAt(new Date().toISOString() as Instant, (await this.here()).zone);
  }

  async change(version: number, form: ChangeDepartmentDto): Promise<DepartmentView> {
    if (form.zone !== undefined && !isZone(form.zone)) refuse('malformed', {}, { zone: 'is a time zone such as America/Denver' });
    const now = await this.here();
    const next = { ...now, ...form, settings: { ...now.settings, ...form.settings } };
    const changed = await this.work.sql(
      `update department set name = $3, zone = $4, locale = $5, fiscal_year_starts_in_month = $6, school_year_starts_in_month = $7,
         settings = $8, version = version + 1 where id = $1 and version = $2 returning id`,
      [version, next.name, next.zone, next.locale, next.fiscalYearStartsInMonth, next.schoolYearStartsInMonth, JSON.stringify(next.settings)],
    );
    if (changed.length === 0) refuse('stale-version');
    return this.here();
  }
}
