import { Entity } from 'typeorm';
import { CentsColumn, CountColumn, DepartmentColumn, IdColumn, RefColumn, TextColumn } from '../../platform/database/columns.ts';

@Entity('credit_memo_line')
export class CreditMemoLine {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() creditMemoId: string;
  @CountColumn() place: number;
  @TextColumn() description: string;
  @CountColumn() quantity: number;
  @CentsColumn({ nullable: true }) unitCents: number | null;
  @CentsColumn() amountCents: number;
  @CentsColumn() taxCents: number;
  @RefColumn({ nullable: true }) invoiceId: string | null;
  @RefColumn({ nullable: true }) commitmentId: string | null;
}
