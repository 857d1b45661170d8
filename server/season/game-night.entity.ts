import { Entity } from 'typeorm';
import { CountColumn, DepartmentColumn, IdColumn, RefColumn, VersionColumn } from '../platform/database/columns.ts';

@Entity('game_night')
export class GameNight {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() gameId: string;
  @RefColumn() nightId: string;
  @CountColumn() place: number;
  @VersionColumn() version: number;
}
