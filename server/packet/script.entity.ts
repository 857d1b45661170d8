import { Entity } from 'typeorm';
import type { Moment } from '../domain/packet/script.ts';
import type { Day } from '../domain/day.ts';
import { CountColumn, DayColumn, DepartmentColumn, FlagColumn, IdColumn, TextColumn, VersionColumn } from '../platform/database/columns.ts';

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
  @TextColumn({ nullable: true }) variant: string | null;
  @TextColumn({ nullable: true }) secondLanguage: 'en' | 'es' | null;
  @TextColumn({ nullable: true }) secondText: string | null;
  /** counts the changes of its words */
  @CountColumn() wordsNumber: number;
  @DayColumn({ nullable: true }) approvedOn: Day | null;
  @TextColumn({ nullable: true }) approvedByName: string | null;
  @FlagColumn() isOn: boolean;
  @CountColumn() place: number;
  @VersionColumn() version: number;
}
