import { Entity } from 'typeorm';
import type { Day } from '../../domain/day.ts';
import type { WindowKind } from '../../domain/season/sport-profile.ts';
import type { Reach } from '../../domain/sponsorship/company/rights.ts';
import { DayColumn, DepartmentColumn, IdColumn, ListColumn, RefColumn, TextColumn, VersionColumn } from '../../platform/database/columns.ts';

/** Who is promised to be the only one of a category: over the days, in named games, or in windows of a kind. */
@Entity('exclusivity')
export class Exclusivity {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn({ nullable: true }) contractId: string | null;
  @RefColumn({ nullable: true }) offerId: string | null;
  @RefColumn() categoryId: string;
  @TextColumn() reach: Reach;
  @RefColumn({ nullable: true }) schoolId: string | null;
  @DayColumn() startsOn: Day;
  @DayColumn() endsOn: Day;
  @ListColumn('uuid') gameIds: string[];
  @ListColumn('text') windowKinds: WindowKind[];
  @VersionColumn() version: number;
}
