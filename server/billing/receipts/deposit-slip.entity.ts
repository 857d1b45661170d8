import { Entity } from 'typeorm';
import { CentsColumn, CountColumn, DayColumn, DepartmentColumn, IdColumn, RefColumn, TextColumn } from '../../platform/database/columns.ts';

/** What lay in the drawer of one seller of record and went to the bank together. */
@Entity('deposit_slip')
export class DepositSlip {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @TextColumn() number: string;
  @CountColumn() fiscalYear: number;
  @CountColumn() seriesNumber: number;
  @RefColumn() sellerId: string;
  @DayColumn() depositedOn: string;
  @CentsColumn() expectedCents: number;
  @CentsColumn() countedCents: number;
  @TextColumn({ nullable: true }) note: string | null;
  @RefColumn({ nullable: true }) eventId: string | null;
  @RefColumn({ nullable: true }) depositedByPersonId: string | null;
}
