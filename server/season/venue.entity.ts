import { Entity } from 'typeorm';
import { DepartmentColumn, FlagColumn, IdColumn, TextColumn, VersionColumn } from '../platform/database/columns.ts';

@Entity('venue')
export class Venue {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @TextColumn() name: string;
  @TextColumn({ nullable: true }) sayAs: string | null;
  @FlagColumn() isOurs: boolean;
  @TextColumn({ nullable: true }) address: string | null;
  @TextColumn({ nullable: true }) exitsText: string | null;
  @TextColumn({ nullable: true }) defibrillatorPlace: string | null;
  @TextColumn({ nullable: true }) evacuationText: string | null;
  @TextColumn({ nullable: true }) weatherText: string | null;
  @TextColumn({ nullable: true }) injuryText: string | null;
  @TextColumn({ nullable: true }) threatText: string | null;
  @VersionColumn() version: number;
}
