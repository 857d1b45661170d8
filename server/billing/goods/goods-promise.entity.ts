import { Entity } from 'typeorm';
import type { Day } from '../../domain/day.ts';
import type { Cents } from '../../domain/money.ts';
import { CentsColumn, CountColumn, DayColumn, DepartmentColumn, IdColumn, RefColumn, TextColumn, VersionColumn } from '../../platform/database/columns.ts';

@Entity('goods_promise')
export class GoodsPromiseRow {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() contractId: string;
  @CountColumn() place: number;
  @TextColumn() what: string;
  @CountColumn() quantity: number;
  @CentsColumn() unitCents: Cents;
  @DayColumn({ nullable: true }) dueOn: Day | null;
  @VersionColumn() version: number;
}
