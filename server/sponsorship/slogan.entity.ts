import { Entity } from 'typeorm';
import { DayColumn, DepartmentColumn, IdColumn, RefColumn, TextColumn, VersionColumn } from '../platform/database/columns.ts';

/** A slogan a sponsor has long used: it passes the copy check. */
@Entity('slogan')
export class Slogan {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() sponsorId: string;
  @TextColumn() text: string;
  /** where it is known from: the sign, the letterhead, since when */
  @TextColumn() knownFrom: string;
  @DayColumn() registeredOn: string;
  @VersionColumn() version: number;
}
