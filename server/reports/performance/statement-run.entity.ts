import { Entity } from 'typeorm';
import type { Day } from '../../domain/day.ts';
import type { Instant } from '../../domain/instant.ts';
import { DayColumn, DepartmentColumn, IdColumn, InstantColumn, JsonColumn, ListColumn, RefColumn, TextColumn, VersionColumn } from '../../platform/database/columns.ts';
import type { StatementRunState } from './performance.dto.ts';

/** Why a run gave a contract no statement. */
export interface RunFailure {
  contractId: string;
  code: string;
  why: string;
}

/** Statements asked for together: which contracts, and which of them got none and why. What was issued bears the run's id. */
@Entity('statement_run')
export class StatementRun {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() seasonId: string;
  @DayColumn() throughOn: Day;
  @DayColumn() issuedOn: Day;
  @TextColumn() state: StatementRunState;
  @ListColumn('uuid') contractIds: string[];
  @JsonColumn() failures: RunFailure[];
  @RefColumn({ nullable: true }) askedByPersonId: string | null;
  @InstantColumn() askedAt: Instant;
  @InstantColumn({ nullable: true }) endedAt: Instant | null;
  @VersionColumn() version: number;
}
