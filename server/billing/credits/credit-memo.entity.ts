import { Entity } from 'typeorm';
import { CentsColumn, CountColumn, DayColumn, DepartmentColumn, IdColumn, JsonColumn, RefColumn, TextColumn } from '../../platform/database/columns.ts';

/** Issued once, as an invoice is; how its credit is used stands in applications and refunds. */
@Entity('credit_memo')
export class CreditMemo {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @TextColumn() number: string;
  @CountColumn() fiscalYear: number;
  @CountColumn() seriesNumber: number;
  @RefColumn() sellerId: string;
  @RefColumn() payerId: string;
  /** the invoice it credits first; none where only goods were paid */
  @RefColumn({ nullable: true }) invoiceId: string | null;
  @RefColumn({ nullable: true }) contractId: string | null;
  @RefColumn({ nullable: true }) termId: string | null;
  @TextColumn({ nullable: true }) reason: string | null;
  @DayColumn() issuedOn: string;
  @CentsColumn() netCents: number;
  @CentsColumn() taxCents: number;
  @CentsColumn() grossCents: number;
  @JsonColumn() snapshot: unknown;
  @RefColumn({ nullable: true }) eventId: string | null;
  @RefColumn({ nullable: true }) issuedByPersonId: string | null;
}
