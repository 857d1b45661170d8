import { Entity } from 'typeorm';
import { CentsColumn, DayColumn, DepartmentColumn, IdColumn, RefColumn, TextColumn } from '../../platform/database/columns.ts';

/** A step of giving an invoice up: asked for, then written off or declined; recovered where money comes after all. */
@Entity('write_off')
export class WriteOff {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() invoiceId: string;
  @TextColumn() step: 'asked' | 'writtenOff' | 'declined' | 'recovered';
  @RefColumn({ nullable: true }) answersWriteOffId: string | null;
  @CentsColumn() amountCents: number;
  @DayColumn() happenedOn: string;
  @TextColumn() reason: string;
  @RefColumn({ nullable: true }) eventId: string | null;
  @RefColumn({ nullable: true }) recordedByPersonId: string | null;
}
