import { Entity } from 'typeorm';
import type { Day } from '../domain/day.ts';
import { DayColumn, DepartmentColumn, IdColumn, JsonColumn, RecordedAtColumn, RefColumn } from '../platform/database/columns.ts';

/** A night that was not signed off when its month was closed: what it counts goes into the first open month. */
export interface LateNight {
  nightId: string;
  heldOn: string;
  title: string;
  venueName: string;
  readsLogged: number;
  readsPlanned: number;
}

@Entity('month_close')
export class MonthClose {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @DayColumn() month: Day;
  @JsonColumn({ nullable: true }) lateNights: LateNight[] | null;
  @RefColumn({ nullable: true }) closedByPersonId: string | null;
  @RecordedAtColumn() recordedAt: string;
}
