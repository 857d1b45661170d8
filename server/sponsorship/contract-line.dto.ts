import type { Level } from '../domain/season/game.ts';
import { LEVELS } from '../domain/season/game.ts';
import { WINDOW_KINDS } from '../domain/season/sport-profile.ts';
import type { WindowKind } from '../domain/season/sport-profile.ts';
import type { Counting } from '../domain/sponsorship/contract-terms.ts';
import { SEPARATIONS } from '../domain/sponsorship/separation.ts';
import type { Separation } from '../domain/sponsorship/separation.ts';
import { CentsField, ChoiceField, ChoicesField, CountField, DayField, DaysField, FlagField, IdField, IdsField, TextField } from '../platform/http/fields.ts';
import { MOST_RATE_CENTS, MOST_READS } from './amounts.ts';

const OPEN = { optional: true, nullable: true };

export const COUNTINGS = ['perTerm', 'perGame', 'perNight', 'onOccurrence'];

/** A commitment as a draft names it. An id that the draft has already keeps its line. */
export class CommitmentDto {
  @IdField(OPEN) id?: string | null;
  @IdField() readKindId: string;
  @ChoiceField(COUNTINGS) counting: Counting;
  @CountField(0, MOST_READS, { optional: true }) reads?: number;
  @CountField(0, MOST_READS, OPEN) readsAtLeast?: number | null;
  @CountField(0, MOST_READS, OPEN) readsAtMost?: number | null;
  @ChoiceField(['ours', 'both'], { optional: true }) whose?: 'ours' | 'both';
  @FlagField({ optional: true }) severalCountAsOne?: boolean;
  @CentsField({ most: MOST_RATE_CENTS }, { optional: true }) rateCents?: number;
  @CentsField({ most: MOST_RATE_CENTS }, OPEN) priceEachCents?: number | null;
  /** sales tax is charged on it, where the seller charges any */
  @FlagField({ optional: true }) isTaxed?: boolean;
  @DayField(OPEN) startsOn?: string | null;
  @DayField(OPEN) endsOn?: string | null;
  @IdsField(100, { optional: true }) teamIds?: string[];
  @ChoicesField(LEVELS, { optional: true }) levels?: Level[];
  @CountField(0, 99, OPEN) leastPerGame?: number | null;
  @CountField(1, 99, OPEN) mostPerGame?: number | null;
  @ChoiceField(SEPARATIONS, { optional: true }) separation?: Separation;
  @ChoicesField(WINDOW_KINDS, { optional: true }) windowKinds?: WindowKind[];
  @DaysField(60, { optional: true }) blackoutDays?: string[];
  @IdsField(60, { optional: true }) pinnedGameIds?: string[];
  @CountField(1, 3, { optional: true }) priority?: number;
}

export class BenefitDto {
  @IdField(OPEN) id?: string | null;
  @TextField(1, 120) name: string;
  @CountField(1, MOST_READS, { optional: true }) quantity?: number;
  @CentsField({ most: MOST_RATE_CENTS }, { optional: true }) rateCents?: number;
  @CentsField({ most: MOST_RATE_CENTS }, OPEN) fairValueCents?: number | null;
  @FlagField({ optional: true }) isTaxed?: boolean;
  @ChoiceField(['onDelivery', 'overDays'], { optional: true }) earns?: 'onDelivery' | 'overDays';
  @DayField(OPEN) startsOn?: string | null;
  @DayField(OPEN) endsOn?: string | null;
  @DayField(OPEN) dueOn?: string | null;
}
