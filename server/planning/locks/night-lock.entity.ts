import { Entity } from 'typeorm';
import { DepartmentColumn, IdColumn, RefColumn, TextColumn, VersionColumn } from '../../platform/database/columns.ts';

/** Nothing is planned into or out of this night. */
@Entity('night_lock')
export class NightLock {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() nightId: string;
  /** its packet is issued, or a person said so */
  @TextColumn() why: 'issued' | 'person';
  @TextColumn({ nullable: true }) note: string | null;
  @RefColumn({ nullable: true }) lockedByPersonId: string | null;
  @VersionColumn() version: number;
}
