import { Entity } from 'typeorm';
import type { Day } from '../../domain/day.ts';
import { CountColumn, DayColumn, DepartmentColumn, IdColumn, RefColumn, TextColumn } from '../../platform/database/columns.ts';

/** A missed read that a proposal speaks for: no other may. */
@Entity('missed_read')
export class MissedReadRow {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() proposalId: string;
  @RefColumn() commitmentId: string;
  @CountColumn() place: number;
  @RefColumn({ nullable: true }) nightId: string | null;
  @RefColumn({ nullable: true }) gameId: string | null;
  @RefColumn({ nullable: true }) placementId: string | null;
  @TextColumn({ nullable: true }) windowKey: string | null;
  @DayColumn() missedOn: Day;
  @TextColumn() why: string;
}
