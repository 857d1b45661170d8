import { Entity } from 'typeorm';
import type { Day } from '../domain/day.ts';
import type { Sport } from '../domain/season/sport-profile.ts';
import { DayColumn, DepartmentColumn, IdColumn, RefColumn, TextColumn, VersionColumn } from '../platform/database/columns.ts';

@Entity('season')
export class Season {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @TextColumn() name: string;
  @TextColumn() sport: Sport;
  @DayColumn() startsOn: Day;
  @DayColumn() endsOn: Day;
  /** the season that was rolled over into this one */
  @RefColumn({ nullable: true }) followsSeasonId: string | null;
  @VersionColumn() version: number;
}
