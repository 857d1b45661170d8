import { Entity } from 'typeorm';
import type { Day } from '../domain/day.ts';
import type { Cents } from '../domain/money.ts';
import type { Level } from '../domain/season/game.ts';
import type { WindowKind } from '../domain/season/sport-profile.ts';
import type { Counting } from '../domain/sponsorship/contract-terms.ts';
import type { Separation } from '../domain/sponsorship/separation.ts';
import { CentsColumn, CountColumn, DayColumn, DepartmentColumn, FlagColumn, IdColumn, ListColumn, RefColumn, TextColumn, VersionColumn } from '../platform/database/columns.ts';

/** N reads of one kind over certain teams, levels and days. */
@Entity('commitment')
export class Commitment {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() termId: string;
  @RefColumn() contractId: string;
  @RefColumn() readKindId: string;
  @CountColumn() place: number;
  @TextColumn() counting: Counting;
  @CountColumn() reads: number;
  @CountColumn({ nullable: true }) readsAtLeast: number | null;
  @CountColumn({ nullable: true }) readsAtMost: number | null;
  @TextColumn() whose: 'ours' | 'both';
  @FlagColumn() severalCountAsOne: boolean;
  @CentsColumn() rateCents: Cents;
  @CentsColumn({ nullable: true }) priceEachCents: Cents | null;
  @FlagColumn() isTaxed: boolean;
  @DayColumn({ nullable: true }) startsOn: Day | null;
  @DayColumn({ nullable: true }) endsOn: Day | null;
  @ListColumn('uuid') teamIds: string[];
  @ListColumn('text') levels: Level[];
  @CountColumn({ nullable: true }) leastPerGame: number | null;
  @CountColumn({ nullable: true }) mostPerGame: number | null;
  @TextColumn() separation: Separation;
  /** narrower than the read kind's windows; empty: all of them */
  @ListColumn('text') windowKinds: WindowKind[];
  @ListColumn('date') blackoutDays: Day[];
  /** games that were promised aloud: the planner keeps a read in each */
  @ListColumn('uuid') pinnedGameIds: string[];
  @CountColumn() priority: number;
  @VersionColumn() version: number;
}
