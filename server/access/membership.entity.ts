import { Entity } from 'typeorm';
import type { Role } from '../domain/access/rights.ts';
import { DayColumn, DepartmentColumn, IdColumn, ListColumn, RefColumn, VersionColumn } from '../platform/database/columns.ts';

@Entity('membership')
export class Membership {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() personId: string;
  @ListColumn('text') roles: Role[];
  @DayColumn({ nullable: true }) endedOn: string | null;
  @VersionColumn() version: number;
}
