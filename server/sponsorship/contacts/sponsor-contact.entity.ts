import { Entity } from 'typeorm';
import { DayColumn, DepartmentColumn, IdColumn, RecordedAtColumn, RefColumn, TextColumn } from '../../platform/database/columns.ts';

export const CONTACT_WAYS = ['call', 'visit', 'message', 'letter'] as const;
export type ContactWay = (typeof CONTACT_WAYS)[number];

/** What was said to a sponsor, and what was agreed comes next. History: a mistake is put right by another contact. */
@Entity('sponsor_contact')
export class SponsorContact {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() sponsorId: string;
  @DayColumn() contactedOn: string;
  @TextColumn() how: ContactWay;
  @TextColumn({ nullable: true }) withWhom: string | null;
  @TextColumn() what: string;
  @TextColumn({ nullable: true }) nextStep: string | null;
  @DayColumn({ nullable: true }) nextStepOn: string | null;
  @RefColumn({ nullable: true }) contactedByPersonId: string | null;
  @RecordedAtColumn() recordedAt: string;
}
