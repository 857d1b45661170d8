import { Entity } from 'typeorm';
import { CountColumn, DepartmentColumn, FlagColumn, IdColumn, RefColumn, TextColumn, VersionColumn } from '../platform/database/columns.ts';

/** A planned read: this commitment in this place of this window of this game. */
@Entity('placement')
export class Placement {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() commitmentId: string;
  @RefColumn() gameId: string;
  @RefColumn() nightId: string;
  @TextColumn() windowKey: string;
  @CountColumn() place: number;
  @RefColumn({ nullable: true }) copyVersionId: string | null;
  @RefColumn({ nullable: true }) makegoodId: string | null;
  @FlagColumn() isPinned: boolean;
  /** why it stands beside a competitor all the same */
  @TextColumn({ nullable: true }) besideCompetitorReason: string | null;
  @VersionColumn() version: number;
}
