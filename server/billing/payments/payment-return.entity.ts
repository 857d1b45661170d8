import { Entity } from 'typeorm';
import { CentsColumn, DayColumn, DepartmentColumn, IdColumn, RefColumn, TextColumn } from '../../platform/database/columns.ts';

/** A payment that is none after all. */
@Entity('payment_return')
export class PaymentReturn {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() paymentId: string;
  @TextColumn() kind: 'returned' | 'mistake';
  @DayColumn() returnedOn: string;
  @CentsColumn() bankFeeCents: number;
  @TextColumn() reason: string;
  @RefColumn({ nullable: true }) eventId: string | null;
  @RefColumn({ nullable: true }) recordedByPersonId: string | null;
}
