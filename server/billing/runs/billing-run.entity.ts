import { Entity } from 'typeorm';
import type { Day } from '../../domain/day.ts';
import { DayColumn, DepartmentColumn, IdColumn, ListColumn, RecordedAtColumn, RefColumn } from '../../platform/database/columns.ts';

/** Which contracts are billed through which day; how far it has come stands in its lines. */
@Entity('billing_run')
export class BillingRun {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @DayColumn() throughDay: Day;
  @DayColumn() issuedOn: Day;
  @RefColumn({ nullable: true }) sellerId: string | null;
  @ListColumn('uuid') contractIds: string[];
  @RefColumn({ nullable: true }) startedByPersonId: string | null;
  @RecordedAtColumn() recordedAt: string;
}
