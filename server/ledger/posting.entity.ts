import { Entity } from 'typeorm';
import { CountColumn, DayColumn, DepartmentColumn, IdColumn, RefColumn, TextColumn } from '../platform/database/columns.ts';

@Entity('posting')
export class PostingRow {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() entryId: string;
  @RefColumn() eventId: string;
  @TextColumn() journal: string;
  @TextColumn() fromAccount: string;
  @TextColumn() toAccount: string;
  @CountColumn() amount: number;
  @RefColumn({ nullable: true }) contractId: string | null;
  @RefColumn({ nullable: true }) termId: string | null;
  @RefColumn({ nullable: true }) commitmentId: string | null;
  @RefColumn({ nullable: true }) gameId: string | null;
  @RefColumn({ nullable: true }) sellerId: string | null;
  @RefColumn({ nullable: true }) invoiceId: string | null;
  @RefColumn({ nullable: true }) unappliedId: string | null;
  @DayColumn() occurredOn: string;
  @DayColumn() effectiveOn: string;
}
