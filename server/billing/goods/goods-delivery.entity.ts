import { Entity } from 'typeorm';
import type { Day } from '../../domain/day.ts';
import { CountColumn, DayColumn, DepartmentColumn, IdColumn, RefColumn, TextColumn } from '../../platform/database/columns.ts';

@Entity('goods_delivery')
export class GoodsDelivery {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() goodsPromiseId: string;
  @DayColumn() receivedOn: Day;
  @CountColumn() quantity: number;
  @TextColumn() proof: string;
  @RefColumn({ nullable: true }) eventId: string | null;
  @RefColumn({ nullable: true }) recordedByPersonId: string | null;
}
