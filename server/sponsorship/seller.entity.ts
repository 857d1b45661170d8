import { Entity } from 'typeorm';
import { CountColumn, DepartmentColumn, FlagColumn, IdColumn, TextColumn, VersionColumn } from '../platform/database/columns.ts';

/** Who signs and banks: the school, a booster club. Numbers, tax and books are its own. */
@Entity('seller')
export class Seller {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @TextColumn() name: string;
  @TextColumn() numberPrefix: string;
  @TextColumn({ nullable: true }) address: string | null;
  @TextColumn({ nullable: true }) remitTo: string | null;
  @TextColumn({ nullable: true }) taxIdentity: string | null;
  @TextColumn({ nullable: true }) contactName: string | null;
  @TextColumn({ nullable: true }) contactEmail: string | null;
  @TextColumn({ nullable: true }) contactPhone: string | null;
  @CountColumn() taxBasisPoints: number;
  @CountColumn() termsDays: number;
  @FlagColumn() keepsBooksHere: boolean;
  @VersionColumn() version: number;
}
