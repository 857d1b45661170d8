import { Entity } from 'typeorm';
import { CountColumn, DayColumn, DepartmentColumn, IdColumn, JsonColumn, RecordedAtColumn, RefColumn, TextColumn } from '../platform/database/columns.ts';

/** What happened, once; its entries say what it moved in each journal. */
@Entity('ledger_event')
export class LedgerEvent {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @TextColumn() cause: string;
  @RefColumn({ nullable: true }) causeId: string | null;
  @RefColumn({ nullable: true }) contractId: string | null;
  @RefColumn({ nullable: true }) termId: string | null;
  @RefColumn({ nullable: true }) sellerId: string | null;
  @CountColumn({ nullable: true }) place: number | null;
  @JsonColumn() happening: unknown;
  @DayColumn() occurredOn: string;
  @DayColumn() bookedOn: string;
  @RefColumn({ nullable: true }) takesBackEventId: string | null;
  @RefColumn({ nullable: true }) recordedByPersonId: string | null;
  @RecordedAtColumn() recordedAt: string;
}
