import { Entity } from 'typeorm';
import type { Day } from '../../domain/day.ts';
import type { Cents } from '../../domain/money.ts';
import type { Level } from '../../domain/season/game.ts';
import type { WindowKind } from '../../domain/season/sport-profile.ts';
import type { Counting } from '../../domain/sponsorship/contract-terms.ts';
import type { Separation } from '../../domain/sponsorship/separation.ts';
import { CentsColumn, CountColumn, DayColumn, DepartmentColumn, FlagColumn, IdColumn, ListColumn, RefColumn, TextColumn, VersionColumn } from '../../platform/database/columns.ts';

/** A read kind or another benefit that is offered: what a commitment or a benefit becomes of, once signed. */
@Entity('offer_line')
export class OfferLine {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() offerId: string;
  @CountColumn() place: number;
  @RefColumn({ nullable: true }) readKindId: string | null;
  @TextColumn({ nullable: true }) benefitName: string | null;
  @TextColumn({ nullable: true }) counting: Counting | null;
  /** reads per term, game or night; pieces of a benefit */
  @CountColumn() quantity: number;
  @CountColumn({ nullable: true }) readsAtLeast: number | null;
  @CountColumn({ nullable: true }) readsAtMost: number | null;
  @TextColumn() whose: 'ours' | 'both';
  @FlagColumn() severalCountAsOne: boolean;
  @CentsColumn() rateCents: Cents;
  @CentsColumn({ nullable: true }) priceEachCents: Cents | null;
  @CentsColumn({ nullable: true }) fairValueCents: Cents | null;
  @FlagColumn() isTaxed: boolean;
  @TextColumn({ nullable: true }) earns: 'onDelivery' | 'overDays' | null;
  @DayColumn({ nullable: true }) dueOn: Day | null;
  @DayColumn({ nullable: true }) startsOn: Day | null;
  @DayColumn({ nullable: true }) endsOn: Day | null;
  @ListColumn('uuid') teamIds: string[];
  @ListColumn('text') levels: Level[];
  @ListColumn('text') windowKinds: WindowKind[];
  @ListColumn('date') blackoutDays: Day[];
  @ListColumn('uuid') pinnedGameIds: string[];
  @CountColumn({ nullable: true }) leastPerGame: number | null;
  @CountColumn({ nullable: true }) mostPerGame: number | null;
  @TextColumn() separation: Separation;
  @CountColumn() priority: number;
  @VersionColumn() version: number;
}
