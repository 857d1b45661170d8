import { Entity } from 'typeorm';
import type { Cents } from '../../domain/money.ts';
import type { Counting } from '../../domain/sponsorship/contract-terms.ts';
import { CentsColumn, CountColumn, DepartmentColumn, IdColumn, RefColumn, TextColumn, VersionColumn } from '../../platform/database/columns.ts';

@Entity('package_line')
export class PackageLine {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() packageId: string;
  @CountColumn() place: number;
  @RefColumn({ nullable: true }) readKindId: string | null;
  @TextColumn({ nullable: true }) counting: Counting | null;
  @TextColumn({ nullable: true }) benefitName: string | null;
  /** reads per term, game or night, or at least on occurrence; pieces of a benefit */
  @CountColumn() quantity: number;
  /** the rate card's price of one when the package was put together */
  @CentsColumn() rateCents: Cents;
  @CountColumn({ nullable: true }) leastPerGame: number | null;
  @CountColumn({ nullable: true }) mostPerGame: number | null;
  @VersionColumn() version: number;
}
