import { Entity } from 'typeorm';
import { DepartmentColumn, IdColumn, TextColumn, VersionColumn } from '../platform/database/columns.ts';

/** How a department calls an account of the money journal, and the code its district's books know it by. */
@Entity('account')
export class AccountRow {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @TextColumn() code: string;
  @TextColumn() name: string;
  @TextColumn({ nullable: true }) outsideCode: string | null;
  @VersionColumn() version: number;
}
