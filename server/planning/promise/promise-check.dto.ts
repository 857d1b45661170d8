import { PickType } from '@nestjs/swagger';
import type { Day } from '../../domain/day.ts';
import type { Counting } from '../../domain/sponsorship/contract-terms.ts';
import { DayField, IdField, ListOf } from '../../platform/http/fields.ts';
import { CommitmentDto } from '../../sponsorship/contract-line.dto.ts';

const OPEN = { optional: true, nullable: true };

/** Reads that somebody would like to promise, as a commitment names them, without their price. */
export class AskedLineDto extends PickType(CommitmentDto, [
  'id', 'readKindId', 'counting', 'reads', 'readsAtLeast', 'readsAtMost', 'startsOn', 'endsOn', 'teamIds', 'levels', 'leastPerGame', 'mostPerGame', 'separation', 'windowKinds',
  'blackoutDays', 'pinnedGameIds', 'priority',
] as const) {}

export class PromiseCheckDto {
  @IdField() seasonId: string;
  @IdField(OPEN) sponsorId?: string | null;
  /** where no sponsor is named yet */
  @IdField(OPEN) categoryId?: string | null;
  /** left out: the season's days */
  @DayField(OPEN) startsOn?: string | null;
  @DayField(OPEN) endsOn?: string | null;
  /** an open offer that these lines would take the place of */
  @IdField(OPEN) leavingOutOfferId?: string | null;
  @ListOf(() => AskedLineDto, { least: 1, most: 30 }) lines: AskedLineDto[];
}

export interface CheckedGame {
  gameId: string;
  label: string;
  playedOn: Day;
}

/** What is answered of one line. */
export interface CheckedLine {
  id: string;
  readKindId: string;
  readKindName: string;
  counting: Counting;
  /** reads over all games that are still to come; 0 for what is read on occurrence */
  asked: number;
  /** of these in the plan that is shown */
  inPlan: number;
  /** the most of it where none of the other lines is promised */
  atLeastAlone: number;
  atMostAlone: number;
  sentence: string;
  /** games in which a line that counts game by game has too few places */
  shortGames: CheckedGame[];
  shortGamesSentence: string | null;
}

/** One month of the plan that is shown. */
export interface CheckedMonth {
  /** `2027-01` */
  month: string;
  /** games of ours that are still to come in it */
  games: number;
  /** reads of each line, by its id */
  reads: Record<string, number>;
}

/** The answer to "can we promise this?". */
export interface PromiseCheckView {
  seasonId: string;
  can: 'yes' | 'no' | 'between';
  asked: number;
  atLeast: number;
  atMost: number;
  /** reads of earlier promises without a place, whether this is promised or not */
  shortBefore: number;
  sentence: string;
  /** why not, what was short before, who is in the way: one sentence each */
  because: string[];
  lines: CheckedLine[];
  months: CheckedMonth[];
  by: 'places' | 'company';
}
