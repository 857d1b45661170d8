import { Entity } from 'typeorm';
import { DayColumn, DepartmentColumn, IdColumn, RefColumn, TextColumn, VersionColumn } from '../platform/database/columns.ts';

export type SponsorStatus = 'prospect' | 'active' | 'past';

@Entity('sponsor')
export class Sponsor {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @TextColumn() name: string;
  @TextColumn({ nullable: true }) sayAs: string | null;
  @RefColumn() categoryId: string;
  @TextColumn() status: SponsorStatus;
  @TextColumn({ nullable: true }) contactName: string | null;
  @TextColumn({ nullable: true }) email: string | null;
  @TextColumn({ nullable: true }) phone: string | null;
  @TextColumn({ nullable: true }) address: string | null;
  @DayColumn({ nullable: true }) lastContactOn: string | null;
  @TextColumn({ nullable: true }) nextStep: string | null;
  @DayColumn({ nullable: true }) nextStepOn: string | null;
  /** whose call it is */
  @RefColumn({ nullable: true }) callerPersonId: string | null;
  @DayColumn({ nullable: true }) lostOn: string | null;
  @TextColumn({ nullable: true }) lostReason: string | null;
  @TextColumn({ nullable: true }) note: string | null;
  @TextColumn({ nullable: true }) outsideId: string | null;
  @VersionColumn() version: number;
}
