import { Entity } from 'typeorm';
import { CountColumn, DayColumn, DepartmentColumn, IdColumn, RefColumn, TextColumn, VersionColumn } from '../../platform/database/columns.ts';

/** N missed reads of a commitment, for which M reads of this kind are given instead. */
@Entity('makegood')
export class Makegood {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() commitmentId: string;
  @RefColumn({ nullable: true }) missedGameId: string | null;
  @CountColumn() missedReads: number;
  @RefColumn() replacementReadKindId: string;
  @CountColumn() replacementReads: number;
  @DayColumn() agreedOn: string;
  @TextColumn() agreedWith: string;
  @VersionColumn() version: number;
}
