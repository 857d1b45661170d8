import { Entity } from 'typeorm';
import { DepartmentColumn, FlagColumn, IdColumn, TextColumn, VersionColumn } from '../platform/database/columns.ts';

@Entity('school')
export class School {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @TextColumn() name: string;
  @TextColumn() shortName: string;
  @TextColumn() nickname: string;
  @TextColumn({ nullable: true }) sayAs: string | null;
  @FlagColumn() isOurs: boolean;
  @TextColumn() firstColour: string;
  @TextColumn() secondColour: string;
  @TextColumn({ nullable: true }) accountCode: string | null;
  @TextColumn({ nullable: true }) outsideId: string | null;
  @VersionColumn() version: number;
}
