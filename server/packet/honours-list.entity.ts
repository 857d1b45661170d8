import { Entity } from 'typeorm';
import { CountColumn, DepartmentColumn, IdColumn, RefColumn, TextColumn, VersionColumn } from '../platform/database/columns.ts';

export const HONOURS_KINDS = ['seniors', 'honours'] as const;
export const HONOURS_WINDOWS = ['pregame', 'halftime', 'postgame'] as const;

/** Students honored one after the other on a night. */
@Entity('honours_list')
export class HonoursListRow {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() nightId: string;
  @TextColumn() title: string;
  @TextColumn() kind: (typeof HONOURS_KINDS)[number];
  @TextColumn() windowKind: (typeof HONOURS_WINDOWS)[number];
  @CountColumn() secondsEach: number;
  @TextColumn({ nullable: true }) openingText: string | null;
  @VersionColumn() version: number;
}

/** One of them; the name stands with the player, so that it can be erased and a family's choice holds. */
@Entity('honoured_student')
export class HonouredStudentRow {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() honoursListId: string;
  @RefColumn() playerId: string;
  @CountColumn() place: number;
  @TextColumn({ nullable: true }) escorts: string | null;
  @TextColumn({ nullable: true }) line: string | null;
  @VersionColumn() version: number;
}
