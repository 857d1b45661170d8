import { Entity } from 'typeorm';
import { CentsColumn, DayColumn, DepartmentColumn, IdColumn, RefColumn, TextColumn } from '../../platform/database/columns.ts';

/** A discount for paying early; the amount is net, its tax stands beside it. */
@Entity('invoice_discount')
export class InvoiceDiscount {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() invoiceId: string;
  @CentsColumn() amountCents: number;
  @CentsColumn() taxCents: number;
  @DayColumn() takenOn: string;
  @TextColumn() reason: string;
  @RefColumn({ nullable: true }) eventId: string | null;
  @RefColumn({ nullable: true }) recordedByPersonId: string | null;
}
