import { Entity } from 'typeorm';
import type { Day } from '../../domain/day.ts';
import { DayColumn, DepartmentColumn, IdColumn, RefColumn, TextColumn, VersionColumn } from '../../platform/database/columns.ts';

/** A category that somebody else has the right to without a contract here. */
@Entity('reserved_category')
export class ReservedCategory {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() categoryId: string;
  @RefColumn({ nullable: true }) schoolId: string | null;
  @TextColumn() heldBy: string;
  @DayColumn() startsOn: Day;
  @DayColumn({ nullable: true }) endsOn: Day | null;
  @TextColumn({ nullable: true }) note: string | null;
  @VersionColumn() version: number;
}
