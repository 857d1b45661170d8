import { Entity } from 'typeorm';
import { CountColumn, DayColumn, DepartmentColumn, IdColumn, InstantColumn, RefColumn, TextColumn, VersionColumn } from '../platform/database/columns.ts';

export type Language = 'en' | 'es';

@Entity('copy_version')
export class CopyVersion {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() copyId: string;
  @CountColumn() number: number;
  @TextColumn() language: Language;
  @TextColumn() text: string;
  /** the same message in the other language; both together are one read */
  @TextColumn({ nullable: true }) secondLanguage: Language | null;
  @TextColumn({ nullable: true }) secondText: string | null;
  @DayColumn({ nullable: true }) startsOn: string | null;
  @DayColumn({ nullable: true }) endsOn: string | null;
  @DayColumn({ nullable: true }) approvedOn: string | null;
  @TextColumn({ nullable: true }) approvedByName: string | null;
  @TextColumn({ nullable: true }) approvedHow: 'link' | 'recordedByDirector' | null;
  @TextColumn({ nullable: true }) approvalNote: string | null;
  @InstantColumn({ nullable: true }) changeAskedAt: string | null;
  @TextColumn({ nullable: true }) changeAskedByName: string | null;
  @TextColumn({ nullable: true }) changeNote: string | null;
  @VersionColumn() version: number;
}
