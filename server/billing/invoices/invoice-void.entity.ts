import { Entity } from 'typeorm';
import { DayColumn, DepartmentColumn, IdColumn, RefColumn, TextColumn } from '../../platform/database/columns.ts';

@Entity('invoice_void')
export class InvoiceVoid {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() invoiceId: string;
  @DayColumn() voidedOn: string;
  @TextColumn() reason: string;
  @RefColumn({ nullable: true }) eventId: string | null;
  @RefColumn({ nullable: true }) voidedByPersonId: string | null;
}
