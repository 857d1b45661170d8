import { Entity } from 'typeorm';
import { CentsColumn, DepartmentColumn, IdColumn, RefColumn } from '../../platform/database/columns.ts';

/** A payment on a deposit slip; each is deposited once. */
@Entity('deposit_slip_line')
export class DepositSlipLine {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() depositSlipId: string;
  @RefColumn() paymentId: string;
  @CentsColumn() amountCents: number;
}
