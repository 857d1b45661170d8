import { Entity } from 'typeorm';
import { DayColumn, DepartmentColumn, IdColumn, RefColumn, TextColumn, VersionColumn } from '../platform/database/columns.ts';

/** Who pays: often the sponsor itself, sometimes its head office. */
@Entity('payer')
export class Payer {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn({ nullable: true }) sponsorId: string | null;
  @TextColumn() name: string;
  @TextColumn({ nullable: true }) email: string | null;
  @TextColumn({ nullable: true }) address: string | null;
  @TextColumn({ nullable: true }) exemptionNumber: string | null;
  @DayColumn({ nullable: true }) exemptionExpiresOn: string | null;
  @VersionColumn() version: number;
}
