import { Entity } from 'typeorm';
import type { Instant } from '../domain/instant.ts';
import type { AnnounceChoice } from '../domain/season/player-name.ts';
import { DepartmentColumn, IdColumn, InstantColumn, RefColumn, TextColumn, VersionColumn } from '../platform/database/columns.ts';

@Entity('player')
export class Player {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() schoolId: string;
  @TextColumn() name: string;
  @TextColumn({ nullable: true }) sayAs: string | null;
  @TextColumn() announce: AnnounceChoice;
  @InstantColumn({ nullable: true }) erasedAt: Instant | null;
  @VersionColumn() version: number;
}
