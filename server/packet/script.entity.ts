import { Entity } from 'typeorm';
import type { Moment } from '../domain/packet/script.ts';
import { CountColumn, DepartmentColumn, FlagColumn, IdColumn, TextColumn, VersionColumn } from '../platform/database/columns.ts';

/** A script of the department's library. */
@Entity('script')
export class ScriptRow {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @TextColumn() moment: Moment;
  @TextColumn({ nullable: true }) sport: string | null;
  @TextColumn() language: 'en' | 'es';
  @TextColumn() title: string;
  @TextColumn() text: string;
  @FlagColumn() isOn: boolean;
  @CountColumn() place: number;
  @VersionColumn() version: number;
}
