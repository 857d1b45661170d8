import { Entity } from 'typeorm';
import type { Level } from '../domain/season/game.ts';
import { DepartmentColumn, IdColumn, RefColumn, TextColumn, VersionColumn } from '../platform/database/columns.ts';

@Entity('team')
export class Team {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() seasonId: string;
  @RefColumn() schoolId: string;
  @TextColumn() name: string;
  @TextColumn() level: Level;
  @TextColumn({ nullable: true }) headCoach: string | null;
  @TextColumn({ nullable: true }) headCoachSayAs: string | null;
  /** the same team in the season before */
  @RefColumn({ nullable: true }) followsTeamId: string | null;
  @VersionColumn() version: number;
}
