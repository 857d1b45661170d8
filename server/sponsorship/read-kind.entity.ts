import { Entity } from 'typeorm';
import { CountColumn, DepartmentColumn, IdColumn, ListColumn, TextColumn, VersionColumn } from '../platform/database/columns.ts';

/** What can be sold to be read. */
@Entity('read_kind')
export class ReadKind {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @TextColumn() name: string;
  @TextColumn() timing: 'scheduled' | 'onOccurrence';
  @ListColumn('text') windows: string[];
  @CountColumn() defaultSeconds: number;
  @CountColumn() sponsorsPerGame: number;
  @TextColumn({ nullable: true }) occurrence: string | null;
  @TextColumn({ nullable: true }) presents: string | null;
  /** kinds of one group share places of their own within a window */
  @TextColumn({ nullable: true }) placeGroup: string | null;
  @VersionColumn() version: number;
}
