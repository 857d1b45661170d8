import { Entity } from 'typeorm';
import type { Drawer } from '../../domain/billing/payment.ts';
import { CentsColumn, CountColumn, DayColumn, DepartmentColumn, IdColumn, RefColumn, TextColumn } from '../../platform/database/columns.ts';

export type PaymentMethod = 'cash' | 'check' | 'card' | 'transfer' | 'opening';

@Entity('payment')
export class Payment {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @TextColumn() number: string;
  /** null for what was recorded before numbers stood in columns of their own */
  @CountColumn({ nullable: true }) fiscalYear: number | null;
  @CountColumn({ nullable: true }) seriesNumber: number | null;
  @RefColumn() sellerId: string;
  @RefColumn() payerId: string;
  @DayColumn() receivedOn: string;
  @TextColumn() method: PaymentMethod;
  @TextColumn({ nullable: true }) reference: string | null;
  @CentsColumn() amountCents: number;
  @TextColumn({ nullable: true }) note: string | null;
  /** where the money lay at first; null is the bank */
  @TextColumn({ nullable: true }) drawer: Drawer | null;
  @RefColumn({ nullable: true }) eventId: string | null;
  @RefColumn({ nullable: true }) recordedByPersonId: string | null;
}
