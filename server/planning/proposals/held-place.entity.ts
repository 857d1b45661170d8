import { Entity } from 'typeorm';
import { CountColumn, DepartmentColumn, IdColumn, RefColumn, TextColumn } from '../../platform/database/columns.ts';

/** Where the accepted plan keeps room for a line of an open offer. */
@Entity('held_place')
export class HeldPlace {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() offerLineId: string;
  @RefColumn() gameId: string;
  @RefColumn() nightId: string;
  @TextColumn() windowKey: string;
  @CountColumn() place: number;
}
