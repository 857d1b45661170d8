import { Column, Entity } from 'typeorm';
import { DepartmentColumn, IdColumn, RecordedAtColumn, RefColumn, TextColumn } from '../platform/database/columns.ts';

/** The paper behind a payer's exemption from sales tax, as it was filed. */
@Entity('exemption_file')
export class ExemptionFile {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() payerId: string;
  @TextColumn() name: string;
  @TextColumn() mediaType: string;
  @Column('bytea') bytes: Buffer;
  @RefColumn({ nullable: true }) filedByPersonId: string | null;
  @RecordedAtColumn() recordedAt: string;
}
