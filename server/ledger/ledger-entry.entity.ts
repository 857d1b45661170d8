import { Entity } from 'typeorm';
import { DepartmentColumn, IdColumn, RefColumn, TextColumn } from '../platform/database/columns.ts';

@Entity('ledger_entry')
export class LedgerEntry {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() eventId: string;
  @TextColumn() journal: string;
}
