import { Entity } from 'typeorm';
import { CentsColumn, DepartmentColumn, IdColumn, RefColumn, TextColumn } from '../../platform/database/columns.ts';

/** What became of one contract in a run, written together with its invoice. */
@Entity('billing_run_line')
export class BillingRunLine {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() billingRunId: string;
  @RefColumn() contractId: string;
  @TextColumn() outcome: 'issued' | 'skipped';
  @RefColumn({ nullable: true }) invoiceId: string | null;
  @CentsColumn() netCents: number;
  @CentsColumn() grossCents: number;
  @TextColumn() why: string;
}
