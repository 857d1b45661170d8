import { Entity } from 'typeorm';
import { DepartmentColumn, FlagColumn, IdColumn, InstantColumn, RefColumn, TextColumn, VersionColumn } from '../platform/database/columns.ts';

/** The words to be read for a sponsor in one kind of read. */
@Entity('copy')
export class Copy {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() sponsorId: string;
  @RefColumn() readKindId: string;
  @TextColumn() title: string;
  @TextColumn() fallbackText: string;
  /** takes turns by game with the sponsor's other copy of this kind that rotates */
  @FlagColumn() rotates: boolean;
  @InstantColumn({ nullable: true }) stoppedAt: string | null;
  @TextColumn({ nullable: true }) stoppedBecause: string | null;
  @TextColumn({ nullable: true }) stoppedByName: string | null;
  @VersionColumn() version: number;
}
