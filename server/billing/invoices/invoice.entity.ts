import { Entity } from 'typeorm';
import { CentsColumn, CountColumn, DayColumn, DepartmentColumn, IdColumn, JsonColumn, RefColumn, TextColumn } from '../../platform/database/columns.ts';

/** Issued once; what happens to it afterwards stands in rows of its own. */
@Entity('invoice')
export class Invoice {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @TextColumn() kind: 'invoice' | 'charge' | 'opening';
  @TextColumn() number: string;
  @CountColumn() fiscalYear: number;
  @CountColumn() seriesNumber: number;
  @RefColumn() sellerId: string;
  @RefColumn() payerId: string;
  @RefColumn({ nullable: true }) sponsorId: string | null;
  @RefColumn({ nullable: true }) contractId: string | null;
  @RefColumn({ nullable: true }) termId: string | null;
  @TextColumn({ nullable: true }) purchaseOrderNumber: string | null;
  @DayColumn() issuedOn: string;
  @DayColumn() dueOn: string;
  @CentsColumn() netCents: number;
  @CountColumn() taxBasisPoints: number;
  @CentsColumn() taxCents: number;
  @CentsColumn() grossCents: number;
  @JsonColumn() snapshot: unknown;
  @RefColumn({ nullable: true }) eventId: string | null;
  @RefColumn({ nullable: true }) issuedByPersonId: string | null;
}
