import { Entity } from 'typeorm';
import { CentsColumn, DayColumn, DepartmentColumn, IdColumn, RefColumn, TextColumn } from '../../platform/database/columns.ts';

export type PaymentMethod = 'cash' | 'check' | 'card' | 'transfer' | 'opening';

@Entity('payment')
export class Payment {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @TextColumn() number: string;
  @RefColumn() sellerId: string;
  @RefColumn() payerId: string;
  @DayColumn() receivedOn: string;
  @TextColumn() method: PaymentMethod;
  @TextColumn({ nullable: true }) reference: string | null;
  @CentsColumn() amountCents: number;
  @TextColumn({ nullable: true }) note: string | null;
  @RefColumn({ nullable: true }) eventId: string | null;
  @RefColumn({ nullable: true }) recordedByPersonId: string | null;
}
