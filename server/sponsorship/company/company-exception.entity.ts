import { Entity } from 'typeorm';
import type { Day } from '../../domain/day.ts';
import { DayColumn, DepartmentColumn, IdColumn, RecordedAtColumn, RefColumn, TextColumn } from '../../platform/database/columns.ts';

/** Somebody allowed it all the same: against whose right, why, and who approved it. */
@Entity('company_exception')
export class CompanyException {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn({ nullable: true }) contractId: string | null;
  @RefColumn({ nullable: true }) offerId: string | null;
  @RefColumn({ nullable: true }) exclusivityId: string | null;
  @RefColumn({ nullable: true }) againstDealId: string | null;
  @RefColumn({ nullable: true }) reservedCategoryId: string | null;
  @RefColumn({ nullable: true }) blockedCategoryId: string | null;
  @TextColumn() reason: string;
  @TextColumn() approvedByName: string;
  @DayColumn() approvedOn: Day;
  @RefColumn({ nullable: true }) recordedByPersonId: string | null;
  @RecordedAtColumn() recordedAt: string;
}
