import { Entity } from 'typeorm';
import { DepartmentColumn, IdColumn, RefColumn, TextColumn, VersionColumn } from '../platform/database/columns.ts';

@Entity('floor')
export class Floor {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() venueId: string;
  @TextColumn() name: string;
  @VersionColumn() version: number;
}
