import { Entity } from 'typeorm';
import { CountColumn, DepartmentColumn, IdColumn, JsonColumn, RefColumn, TextColumn } from '../database/columns.ts';

@Entity('idempotency_record')
export class IdempotencyRecord {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @TextColumn() key: string;
  @RefColumn({ nullable: true }) personId: string | null;
  @TextColumn() route: string;
  @TextColumn() payloadDigest: string;
  @CountColumn() status: number;
  @JsonColumn({ nullable: true }) body: unknown;
}
