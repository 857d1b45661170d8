import { Entity } from 'typeorm';
import type { Day } from '../domain/day.ts';
import type { Instant } from '../domain/instant.ts';
import type { AnthemForm, FlagForm } from './night.dto.ts';
import { CountColumn, DayColumn, DepartmentColumn, IdColumn, InstantColumn, RefColumn, TextColumn, VersionColumn } from '../platform/database/columns.ts';

@Entity('night')
export class Night {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @DayColumn() heldOn: Day;
  @RefColumn() venueId: string;
  @RefColumn({ nullable: true }) floorId: string | null;
  @TextColumn({ nullable: true }) title: string | null;
  @InstantColumn({ nullable: true }) doorsAt: Instant | null;
  @TextColumn({ nullable: true }) note: string | null;
  @TextColumn({ nullable: true }) anthemForm: AnthemForm | null;
  @TextColumn({ nullable: true }) flagForm: FlagForm | null;
  @CountColumn({ nullable: true }) halftimeSeconds: number | null;
  @VersionColumn() version: number;
}
