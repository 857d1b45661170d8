import { Entity } from 'typeorm';
import type { Day } from '../domain/day.ts';
import type { Cents } from '../domain/money.ts';
import { CentsColumn, CountColumn, DayColumn, DepartmentColumn, FlagColumn, IdColumn, RefColumn, TextColumn, VersionColumn } from '../platform/database/columns.ts';

/** What a package also carries: a banner, a program page, passes. */
@Entity('benefit')
export class Benefit {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() termId: string;
  @RefColumn() contractId: string;
  @CountColumn() place: number;
  @TextColumn() name: string;
  @CountColumn() quantity: number;
  @CentsColumn() rateCents: Cents;
  @CentsColumn({ nullable: true }) fairValueCents: Cents | null;
  @FlagColumn() isTaxed: boolean;
  @TextColumn() earns: 'onDelivery' | 'overDays';
  @DayColumn({ nullable: true }) startsOn: Day | null;
  @DayColumn({ nullable: true }) endsOn: Day | null;
  @DayColumn({ nullable: true }) dueOn: Day | null;
  @VersionColumn() version: number;
}
