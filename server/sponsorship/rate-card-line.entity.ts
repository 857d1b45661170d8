import { Entity } from 'typeorm';
import { CentsColumn, DepartmentColumn, IdColumn, RefColumn, TextColumn, VersionColumn } from '../platform/database/columns.ts';

/** The season's price of one read, or of one other benefit. */
@Entity('rate_card_line')
export class RateCardLine {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() seasonId: string;
  @RefColumn({ nullable: true }) readKindId: string | null;
  @TextColumn({ nullable: true }) benefitName: string | null;
  @CentsColumn() priceCents: number;
  @VersionColumn() version: number;
}
