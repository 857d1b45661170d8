import { Entity } from 'typeorm';
import type { Day } from '../domain/day.ts';
import { DayColumn, DepartmentColumn, IdColumn, RefColumn, TextColumn } from '../platform/database/columns.ts';

/** A contract is held, or (where it names a hold) a hold is lifted. */
@Entity('contract_hold')
export class ContractHold {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() contractId: string;
  @DayColumn() heldOn: Day;
  @TextColumn() reason: string;
  @RefColumn({ nullable: true }) liftsHoldId: string | null;
  @RefColumn({ nullable: true }) recordedByPersonId: string | null;
}
