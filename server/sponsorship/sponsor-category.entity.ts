import { Entity } from 'typeorm';
import { DepartmentColumn, FlagColumn, IdColumn, TextColumn, VersionColumn } from '../platform/database/columns.ts';

@Entity('sponsor_category')
export class SponsorCategory {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @TextColumn() name: string;
  @FlagColumn() isBlocked: boolean;
  @FlagColumn() isFood: boolean;
  @VersionColumn() version: number;
}
