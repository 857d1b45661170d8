import { Entity } from 'typeorm';
import { CentsColumn, DayColumn, DepartmentColumn, IdColumn, RefColumn, TextColumn } from '../../platform/database/columns.ts';

/** What is left of a payment or of a credit memo, paid back. */
@Entity('refund')
export class Refund {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn({ nullable: true }) paymentId: string | null;
  @RefColumn({ nullable: true }) creditMemoId: string | null;
  @CentsColumn() amountCents: number;
  @DayColumn() refundedOn: string;
  @TextColumn() method: 'cash' | 'check' | 'card' | 'transfer';
  @TextColumn({ nullable: true }) reference: string | null;
  @RefColumn({ nullable: true }) eventId: string | null;
  @RefColumn({ nullable: true }) recordedByPersonId: string | null;
}
