import { Entity } from 'typeorm';
import type { Instant } from '../domain/instant.ts';
import { CountColumn, DepartmentColumn, IdColumn, InstantColumn, RefColumn, VersionColumn } from '../platform/database/columns.ts';

@Entity('game_night')
export class GameNight {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() gameId: string;
  @RefColumn() nightId: string;
  @CountColumn() place: number;
  /** when a sitting began that was not the last one */
  @InstantColumn({ nullable: true }) startsAt: Instant | null;
  @VersionColumn() version: number;
}
