import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import type { Day } from '../../domain/day.ts';
import { firstOfMonth, lastOfMonth } from '../../domain/day.ts';
import { monthAfter, monthCalled, monthsFrom, nameOfMonth, stateOfMonth } from '../../domain/ledger/month.ts';
import { refuse } from '../../domain/refusals.ts';
import type { LateNight } from '../../ledger/month-close.entity.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { NightService } from '../../season/night.service.ts';
import { CAUTIONS, CLOSES, LATE_NIGHTS, MONTHS } from './month-queries.ts';
import type { CautionView, LateNightView, MonthPageView, MonthView } from './month.dto.ts';

interface CloseRow {
  month: Day;
  closedAt: string;
  closedByName: string | null;
  lateNights: LateNight[];
}

/** The months of the books: which are closed, and what is late in those that are not. */
@Injectable()
export class MonthsService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(NightService) private readonly nights: NightService,
  ) {}

  /** Each month from the first event to this one, or to the last that has an event; the newest first. */
  async list(): Promise<MonthView[]> {
    const rows = await this.work.sql<{ month: Day; events: number; nights: number }>(MONTHS);
    const closes = new Map((await this.work.sql<CloseRow>(CLOSES)).map((row) => [row.month, row]));
    const withEvents = rows.filter((row) => row.events > 0).map((row) => row.month);
    const [first, today] = [withEvents[0], await this.departments.today()];
    if (first === undefined) return [];
    const thisMonth = firstOfMonth(today);
    const last = withEvents.at(-1)! > thisMonth ? withEvents.at(-1)! : thisMonth;
    const closed = [...closes.keys()];
    const months = monthsFrom(first, last);
    const next = months.find((month) => stateOfMonth(month, today, closed) === 'open');
    return months.toReversed().map((month) => {
      const [counted, close] = [rows.find((row) => row.month === month), closes.get(month)];
      return {
        id: nameOfMonth(month),
        firstDay: month,
        state: stateOfMonth(month, today, closed),
        closedAt: close?.closedAt ?? null,
        closedByName: close?.closedByName ?? null,
        events: counted?.events ?? 0,
        lateNightCount: close ? close.lateNights.length : (counted?.nights ?? 0),
        isNext: month === next,
      };
    });
  }

  /** @throws Refused `not-found` for what is no month of these books */
  async one(name: string): Promise<MonthPageView> {
    const month = monthCalled(name);
    const view = (await this.list()).find((one) => one.id === name) ?? refuse('not-found');
    const late = view.state === 'closed' ? await this.lateThen(month) : (await this.lateNights(month)).map((night) => ({ ...night, signedOffSince: false }));
    const cautions = await this.work.sql<CautionView>(CAUTIONS, [lastOfMonth(month)]);
    return { ...view, closesFrom: monthAfter(month), lateNights: late, cautions: cautions.filter((one) => one.count > 0) };
  }

  /** The nights of a month that are not signed off, with what was planned and logged for them. */
  async lateNights(month: Day): Promise<LateNight[]> {
    const rows = await this.work.sql<{ id: string; planned: number; logged: number }>(LATE_NIGHTS, [month, lastOfMonth(month)]);
    if (rows.length === 0) return [];
    const { data } = await this.nights.list({ id: rows.map((row) => row.id), perPage: 500 });
    const byId = new Map(data.map((night) => [night.id, night]));
    return rows.map(({ id, planned, logged }) => {
      const { heldOn, title, venueName } = byId.get(id)!;
      return { nightId: id, heldOn, title, venueName, readsLogged: logged, readsPlanned: planned };
    });
  }

  private async lateThen(month: Day): Promise<LateNightView[]> {
    const close = (await this.work.sql<CloseRow>(CLOSES)).find((row) => row.month === month);
    const nights = close?.lateNights ?? [];
    const signed = await this.work.sql<{ id: string }>('select night_id as id from sign_off where department_id = $1 and night_id = any($2::uuid[])', [nights.map((night) => night.nightId)]);
    return nights.map((night) => ({ ...night, signedOffSince: signed.some(({ id }) => id === night.nightId) }));
  }
}
