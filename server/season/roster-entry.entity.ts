import { Entity } from 'typeorm';
import { DepartmentColumn, FlagColumn, IdColumn, RefColumn, TextColumn, VersionColumn } from '../platform/database/columns.ts';

@Entity('roster_entry')
export class RosterEntry {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() teamId: string;
  @RefColumn() playerId: string;
  @TextColumn() number: string;
  @TextColumn({ nullable: true }) position: string | null;
  @TextColumn({ nullable: true }) grade: string | null;
  @FlagColumn() isStarter: boolean;
  @VersionColumn() version: number;
}
