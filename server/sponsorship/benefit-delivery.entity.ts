import { Entity } from 'typeorm';
import { CountColumn, DayColumn, DepartmentColumn, IdColumn, RefColumn, TextColumn } from '../platform/database/columns.ts';

@Entity('benefit_delivery')
export class BenefitDelivery {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() benefitId: string;
  @DayColumn() deliveredOn: string;
  @CountColumn() quantity: number;
  @TextColumn() proof: string;
  @RefColumn({ nullable: true }) takesBackDeliveryId: string | null;
  @RefColumn({ nullable: true }) recordedByPersonId: string | null;
}
