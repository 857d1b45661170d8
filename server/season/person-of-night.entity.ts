import { Entity } from 'typeorm';
import type { Instant } from '../domain/instant.ts';
import type { RoleOfNight } from './night.dto.ts';
import { DepartmentColumn, IdColumn, InstantColumn, RefColumn, TextColumn, VersionColumn } from '../platform/database/columns.ts';

@Entity('person_of_night')
export class PersonOfNight {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() nightId: string;
  @TextColumn() role: RoleOfNight;
  @RefColumn({ nullable: true }) personId: string | null;
  @TextColumn() name: string;
  @TextColumn({ nullable: true }) sayAs: string | null;
  @InstantColumn({ nullable: true }) arrivesAt: Instant | null;
  @TextColumn({ nullable: true }) note: string | null;
  @VersionColumn() version: number;
}
