import { Entity } from 'typeorm';
import type { Role } from '../domain/access/rights.ts';
import { CountColumn, DayColumn, DepartmentColumn, IdColumn, ListColumn, RefColumn, VersionColumn } from '../platform/database/columns.ts';

@Entity('membership')
export class Membership {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() personId: string;
  @ListColumn('text') roles: Role[];
  @DayColumn({ nullable: true }) endedOn: string | null;
  /** of the 75-word card; null until the person has measured it */
  @CountColumn({ nullable: true }) wordsPerMinute: number | null;
  @VersionColumn() version: number;
}
