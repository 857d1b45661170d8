import { Entity } from 'typeorm';
import { CentsColumn, CountColumn, DepartmentColumn, IdColumn, JsonColumn, RefColumn, TextColumn } from '../../platform/database/columns.ts';

@Entity('invoice_line')
export class InvoiceLine {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() invoiceId: string;
  @CountColumn() place: number;
  @TextColumn() description: string;
  @CountColumn() quantity: number;
  @CentsColumn({ nullable: true }) unitCents: number | null;
  @CentsColumn() amountCents: number;
  @CentsColumn({ nullable: true }) taxCents: number | null;
  @RefColumn({ nullable: true }) commitmentId: string | null;
  @JsonColumn() tracedTo: unknown;
}
