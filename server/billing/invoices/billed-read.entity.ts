import { Entity } from 'typeorm';
import { DepartmentColumn, IdColumn, RefColumn } from '../../platform/database/columns.ts';

/** Holds a read for one live invoice; voiding the invoice lets it go. */
@Entity('billed_read')
export class BilledRead {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() readId: string;
  @RefColumn() invoiceId: string;
}
