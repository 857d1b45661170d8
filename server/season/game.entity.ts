import { Entity } from 'typeorm';
import type { Day } from '../domain/day.ts';
import type { Instant } from '../domain/instant.ts';
import type { GameClass, GameStatus, Level } from '../domain/season/game.ts';
import type { Sport, WindowKind, WindowOwner } from '../domain/season/sport-profile.ts';
import {
  CountColumn,
  DayColumn,
  DepartmentColumn,
  FlagColumn,
  IdColumn,
  InstantColumn,
  JsonColumn,
  RefColumn,
  TextColumn,
  VersionColumn,
} from '../platform/database/columns.ts';

@Entity('game')
export class Game {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() seasonId: string;
  @TextColumn() sport: Sport;
  @TextColumn() level: Level;
  @TextColumn() class: GameClass;
  @TextColumn() status: GameStatus;
  @FlagColumn() announced: boolean;
  @InstantColumn({ nullable: true }) startsAt: Instant | null;
  @DayColumn() playedOn: Day;
  @RefColumn({ nullable: true }) startsAfterGameId: string | null;
  @CountColumn({ nullable: true }) startsAfterMinutes: number | null;
  @RefColumn({ nullable: true }) hostSchoolId: string | null;
  @TextColumn() windowsOwnedBy: WindowOwner;
  @JsonColumn() windowOwners: Partial<Record<WindowKind, WindowOwner>>;
  @DayColumn({ nullable: true }) movedFromOn: Day | null;
  @TextColumn({ nullable: true }) statusNote: string | null;
  @TextColumn({ nullable: true }) outsideId: string | null;
  @VersionColumn() version: number;
}
