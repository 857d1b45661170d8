import { Entity } from 'typeorm';
import type { DisputeOutcome } from '../../domain/makegoods/dispute.ts';
import { CountColumn, DepartmentColumn, IdColumn, InstantColumn, RefColumn, TextColumn, VersionColumn } from '../../platform/database/columns.ts';

/** A sponsor asks about a read, and the school answers. */
@Entity('read_dispute')
export class ReadDispute {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() sponsorId: string;
  @RefColumn() contractId: string;
  @RefColumn() commitmentId: string;
  @RefColumn() nightId: string;
  @RefColumn({ nullable: true }) gameId: string | null;
  @RefColumn({ nullable: true }) entryId: string | null;
  @CountColumn() occurrence: number;
  @TextColumn() askedByName: string;
  @TextColumn() what: string;
  @InstantColumn() askedAt: string;
  @TextColumn({ nullable: true }) outcome: DisputeOutcome | null;
  @TextColumn({ nullable: true }) answer: string | null;
  @RefColumn({ nullable: true }) answeredByPersonId: string | null;
  @InstantColumn({ nullable: true }) answeredAt: string | null;
  @VersionColumn() version: number;
}
