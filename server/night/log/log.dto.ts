import { applyDecorators } from '@nestjs/common';
import { ApiProperty } from '@nestjs/swagger';
import { Transform } from 'class-transformer';
import { IsObject, IsOptional, Validate, ValidatorConstraint } from 'class-validator';
import type { ValidatorConstraintInterface } from 'class-validator';
import { ENTRY_KINDS, READ_OUTCOMES } from '../../domain/night/log-entry.ts';
import type { EntryKind, ReadOutcome } from '../../domain/night/log-entry.ts';
import type { RefusalCode } from '../../domain/refusals.ts';
import { ChoiceField, CountField, IdField, InstantField, ListOf, OptionalTextField, PatternField } from '../../platform/http/fields.ts';

const LARGEST_DETAIL = 4000;

@ValidatorConstraint({ name: 'isSmallRecord' })
class IsSmallRecord implements ValidatorConstraintInterface {
  validate(value: unknown): boolean {
    const text = JSON.stringify(value);
    return text.length <= LARGEST_DETAIL && !text.includes('\\u0000');
  }

  defaultMessage(): string {
    return 'says more than can be kept';
  }
}

/** What belongs to an entry of its kind and has no field of its own. */
const DetailField = () =>
  applyDecorators(
    ApiProperty({ type: Object, required: false, nullable: true, additionalProperties: true }),
    IsOptional(),
    IsObject({ message: 'is a record' }),
    Validate(IsSmallRecord),
  );

const MAYBE = { optional: true, nullable: true } as const;

export class LogEntryDto {
  @IdField() id: string;
  @CountField(1, 2_000_000_000) sequence: number;
  @ChoiceField(ENTRY_KINDS) kind: EntryKind;
  @ChoiceField(READ_OUTCOMES, MAYBE) outcome?: ReadOutcome | null;
  @OptionalTextField(300) reason?: string | null;
  @IdField(MAYBE) gameId?: string | null;
  @OptionalTextField(200) cueKey?: string | null;
  @IdField(MAYBE) placementId?: string | null;
  @IdField(MAYBE) commitmentId?: string | null;
  @OptionalTextField(40) windowKey?: string | null;
  @PatternField(/^[0-9]{1,3}$/, 'is a number of one to three digits', MAYBE) playerNumber?: string | null;
  @IdField(MAYBE) teamId?: string | null;
  @OptionalTextField(40) period?: string | null;
  @OptionalTextField(10) clock?: string | null;
  @DetailField() detail?: Record<string, unknown> | null;
  @IdField(MAYBE) happeningEntryId?: string | null;
  @IdField(MAYBE) takesBackEntryId?: string | null;
  @InstantField() occurredAt: string;
}

const numberGiven = ({ value }: { value: unknown }): unknown => (value === undefined || value === '' ? undefined : Number(value));

export class LogQuery {
  /** only entries numbered above this one, without what they come to */
  @CountField(0, 2_000_000_000, { optional: true })
  @Transform(numberGiven)
  after?: number;

  @CountField(1, 1000, { optional: true })
  @Transform(numberGiven)
  limit?: number;
}

export class LogBatchDto {
  @IdField() deviceId: string;
  @ListOf(() => LogEntryDto, { least: 1, most: 500 }) entries: LogEntryDto[];
}

export interface EntryResult {
  id: string;
  status: 'stored' | 'already' | 'aside' | 'refused';
  /** its number in the night's log, where it is stored */
  number?: number;
  code?: RefusalCode;
  sentence?: string;
}

export interface BatchView {
  results: EntryResult[];
}

export interface LogEntryView {
  id: string;
  number: number;
  deviceId: string;
  /** the place on its device, 1 and up */
  sequence: number;
  kind: EntryKind;
  outcome: ReadOutcome | null;
  reason: string | null;
  gameId: string | null;
  gameLabel: string | null;
  cueKey: string | null;
  /** the number of the happening in its game; of a read, the happening it answers */
  occurrence: number | null;
  placementId: string | null;
  commitmentId: string | null;
  sponsorName: string | null;
  label: string | null;
  windowKey: string | null;
  teamId: string | null;
  playerNumber: string | null;
  period: string | null;
  clock: string | null;
  detail: Readonly<Record<string, unknown>> | null;
  happeningEntryId: string | null;
  occurredAt: string;
  recordedAt: string;
  loggedByName: string | null;
  takenBack: boolean;
  takesBackEntryId: string | null;
  /** what a read or mention comes to: counts, double, cutShortOpen …; null for other kinds */
  counting: string | null;
  sentence: string;
}

export interface NightLogView {
  entries: LogEntryView[];
  state: 'open' | 'signedOff';
  /** reads that sign-off would count; after it, those that are counted */
  toCount: number;
  /** happenings two devices may both have logged, as pairs of entries */
  open: readonly { readonly entryIds: readonly [string, string] }[];
}

/** What is new in a log since the entry that a device has last. */
export interface LogAfterView {
  entries: LogEntryView[];
  state: 'open' | 'signedOff';
  /** of the whole log; above the last entry here there is more to ask for */
  lastNumber: number;
}
