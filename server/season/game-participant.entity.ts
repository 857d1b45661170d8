import { Entity } from 'typeorm';
import { CountColumn, DepartmentColumn, FlagColumn, IdColumn, RefColumn, VersionColumn } from '../platform/database/columns.ts';

@Entity('game_participant')
export class GameParticipant {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() gameId: string;
  @RefColumn() teamId: string;
  @CountColumn() place: number;
  @FlagColumn() isHome: boolean;
  @CountColumn({ nullable: true }) score: number | null;
  @VersionColumn() version: number;
}
