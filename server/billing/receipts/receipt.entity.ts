import { Entity } from 'typeorm';
import { CountColumn, DayColumn, DepartmentColumn, IdColumn, RefColumn, TextColumn } from '../../platform/database/columns.ts';

/** The slip given out at hand-over; its money is a payment that lies in the drawer. */
@Entity('receipt')
export class Receipt {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @TextColumn() number: string;
  @CountColumn() fiscalYear: number;
  @CountColumn() seriesNumber: number;
  @RefColumn() sellerId: string;
  @RefColumn() paymentId: string;
  @TextColumn() fromWhom: string;
  @TextColumn({ nullable: true }) whatFor: string | null;
  @DayColumn() takenOn: string;
  @TextColumn() takenByName: string;
  @RefColumn({ nullable: true }) takenByPersonId: string | null;
}
