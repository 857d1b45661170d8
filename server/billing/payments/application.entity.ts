import { Entity } from 'typeorm';
import { CentsColumn, DayColumn, DepartmentColumn, IdColumn, RefColumn } from '../../platform/database/columns.ts';

/** A credit used on an invoice; taking it back is a row with the opposite sign. */
@Entity('application')
export class AppliedCredit {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn({ nullable: true }) paymentId: string | null;
  @RefColumn({ nullable: true }) creditMemoId: string | null;
  @RefColumn() invoiceId: string;
  @CentsColumn() amountCents: number;
  @DayColumn() appliedOn: string;
  @RefColumn({ nullable: true }) takesBackApplicationId: string | null;
  @RefColumn({ nullable: true }) eventId: string | null;
  @RefColumn({ nullable: true }) recordedByPersonId: string | null;
}
