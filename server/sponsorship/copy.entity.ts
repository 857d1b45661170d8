import { Entity } from 'typeorm';
import { DepartmentColumn, IdColumn, InstantColumn, RefColumn, TextColumn, VersionColumn } from '../platform/database/columns.ts';

/** The words to be read for a sponsor in one kind of read. */
@Entity('copy')
export class Copy {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() sponsorId: string;
  @RefColumn() readKindId: string;
  @TextColumn() title: string;
  @TextColumn() fallbackText: string;
  @InstantColumn({ nullable: true }) stoppedAt: string | null;
  @VersionColumn() version: number;
}
