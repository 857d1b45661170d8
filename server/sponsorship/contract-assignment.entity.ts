import { Entity } from 'typeorm';
import type { Day } from '../domain/day.ts';
import { DayColumn, DepartmentColumn, IdColumn, RefColumn, TextColumn } from '../platform/database/columns.ts';

/** A contract went on with a new owner. */
@Entity('contract_assignment')
export class ContractAssignment {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() contractId: string;
  @RefColumn() fromSponsorId: string;
  @RefColumn() toSponsorId: string;
  @RefColumn() fromPayerId: string;
  @RefColumn() toPayerId: string;
  @DayColumn() assignedOn: Day;
  @TextColumn() reason: string;
  @RefColumn({ nullable: true }) recordedByPersonId: string | null;
}
