import { Entity } from 'typeorm';
import type { WindowKind } from '../domain/season/sport-profile.ts';
import { CountColumn, DepartmentColumn, IdColumn, TextColumn, VersionColumn } from '../platform/database/columns.ts';

/** What the department says of a sport's windows, in place of what the sport's profile says. */
@Entity('window_places')
export class WindowPlaces {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @TextColumn() sport: string;
  @TextColumn() windowKind: WindowKind;
  /** a group of read kinds with places of its own; null: all of them together */
  @TextColumn({ nullable: true }) placeGroup: string | null;
  @CountColumn() places: number;
  @VersionColumn() version: number;
}
