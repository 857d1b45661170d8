import { Entity } from 'typeorm';
import type { Cents } from '../../domain/money.ts';
import { CentsColumn, DepartmentColumn, FlagColumn, IdColumn, RefColumn, TextColumn, VersionColumn } from '../../platform/database/columns.ts';

/** A priced bundle of reads and other benefits of one season. */
@Entity('package')
export class Package {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() seasonId: string;
  @TextColumn() name: string;
  @CentsColumn() priceCents: Cents;
  @FlagColumn() isOffered: boolean;
  @TextColumn({ nullable: true }) note: string | null;
  @VersionColumn() version: number;
}
