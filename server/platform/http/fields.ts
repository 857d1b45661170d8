import { applyDecorators } from '@nestjs/common';
import { ApiProperty } from '@nestjs/swagger';
import type { ApiPropertyOptions } from '@nestjs/swagger';
import { Transform, Type } from 'class-transformer';
import {
  ArrayMaxSize,
  ArrayMinSize,
  IsArray,
  IsBoolean,
  IsIn,
  IsInt,
  IsObject,
  IsOptional,
  IsString,
  IsUUID,
  Length,
  Matches,
  Max,
  MaxLength,
  Min,
  Validate,
  ValidateIf,
  ValidateNested,
  ValidatorConstraint,
} from 'class-validator';
import type { ValidatorConstraintInterface } from 'class-validator';
import { isDay } from '../../domain/day.ts';

/** `optional`: the field may be left out. `nullable`: it may be sent as null. */
export interface FieldOptions {
  optional?: boolean;
  nullable?: boolean;
  description?: string;
}

const LARGEST = Number.MAX_SAFE_INTEGER;

/** One decorator a field: what class-validator checks is what the OpenAPI document promises. */
function field(options: FieldOptions, schema: ApiPropertyOptions, ...checks: PropertyDecorator[]): PropertyDecorator {
  const decorators = [...checks];
  if (options.optional && options.nullable) decorators.unshift(IsOptional());
  else if (options.optional) decorators.unshift(ValidateIf((_, value) => value !== undefined));
  else if (options.nullable) decorators.unshift(ValidateIf((_, value) => value !== null));
  const documented = {
    required: !options.optional,
    ...(options.nullable ? { nullable: true } : {}),
    ...(options.description ? { description: options.description } : {}),
    ...schema,
  } as ApiPropertyOptions;
  return applyDecorators(ApiProperty(documented), ...decorators);
}

const trimmed = Transform(({ value }) => (typeof value === 'string' ? value.normalize('NFC').trim() : value));
const noNul = Matches(/^[^\u0000]*$/u, { message: 'holds a character that cannot be stored' });

/** Text of `least` to `most` characters, spaces around it taken off. */
export function TextField(least: number, most: number, options: FieldOptions = {}): PropertyDecorator {
  const message = least <= 1 ? `is missing or longer than ${most} characters` : `has ${least} to ${most} characters`;
  return field(options, { type: String, minLength: least, maxLength: most }, trimmed, IsString({ message: 'is missing' }), Length(least, most, { message }), noNul);
}

/** Text that may be left out or null; an empty text becomes null. */
export function OptionalTextField(most: number, options: FieldOptions = {}): PropertyDecorator {
  const emptyIsNull = Transform(({ value }) => (typeof value === 'string' ? value.normalize('NFC').trim() || null : value));
  return field(
    { optional: true, nullable: true, ...options },
    { type: String, maxLength: most },
    emptyIsNull,
    IsString({ message: 'is text' }),
    MaxLength(most, { message: `has at most ${most} characters` }),
    noNul,
  );
}

/** A secret: text taken as it is. */
export function SecretField(least: number, most: number, options: FieldOptions = {}): PropertyDecorator {
  return field(options, { type: String, minLength: least, maxLength: most }, IsString({ message: 'is text' }), Length(least, most, { message: `has ${least} to ${most} characters` }));
}

/** Whole cents. */
export function CentsField(bounds: { least?: number; most?: number } = {}, options: FieldOptions = {}): PropertyDecorator {
  const { least = 0, most = LARGEST } = bounds;
  return wholeNumber('is a whole number of cents', least, most, options);
}

/** A whole count. */
export function CountField(least: number, most: number, options: FieldOptions = {}): PropertyDecorator {
  return wholeNumber('is a whole number', least, most, options);
}

function wholeNumber(what: string, least: number, most: number, options: FieldOptions): PropertyDecorator {
  const range = most === LARGEST ? `is ${least} or more` : `is from ${least} to ${most}`;
  return field(
    options,
    { type: 'integer', minimum: least, maximum: most },
    IsInt({ message: what }),
    Min(least, { message: range }),
    Max(most, { message: most === LARGEST ? 'is larger than can be kept exactly' : range }),
  );
}

@ValidatorConstraint({ name: 'isDay' })
class IsDayOfTheCalendar implements ValidatorConstraintInterface {
  validate(value: unknown): boolean {
    return isDay(value) && value >= '1900-01-01' && value <= '2199-12-31';
  }

  defaultMessage(): string {
    return 'is a day of the calendar, such as 2026-12-04';
  }
}

/** A calendar day, `YYYY-MM-DD`. */
export function DayField(options: FieldOptions = {}): PropertyDecorator {
  return field(options, { type: String, format: 'date' }, Validate(IsDayOfTheCalendar));
}

@ValidatorConstraint({ name: 'isInstant' })
class IsMoment implements ValidatorConstraintInterface {
  validate(value: unknown): boolean {
    return (
      typeof value === 'string' &&
      /^\d{4}-\d\d-\d\dT\d\d:\d\d(:\d\d(\.\d{1,9})?)?(Z|[+-]\d\d:\d\d)$/.test(value) &&
      isDay(value.slice(0, 10)) &&
      !Number.isNaN(Date.parse(value))
    );
  }

  defaultMessage(): string {
    return 'is a moment with its zone, such as 2026-12-05T02:00:00Z';
  }
}

/** A moment, ISO 8601 with its offset. */
export function InstantField(options: FieldOptions = {}): PropertyDecorator {
  return field(options, { type: String, format: 'date-time' }, Validate(IsMoment));
}

/** A wall clock, `HH:MM`. */
export function ClockField(options: FieldOptions = {}): PropertyDecorator {
  const pattern = /^([01]\d|2[0-3]):[0-5]\d$/;
  return field(options, { type: String, pattern: pattern.source }, Matches(pattern, { message: 'is a time of day such as 19:00' }));
}

export function ChoiceField(choices: readonly string[], options: FieldOptions = {}): PropertyDecorator {
  return field(options, { type: String, enum: [...choices] }, IsIn([...choices], { message: `is one of ${choices.join(', ')}` }));
}

export function IdField(options: FieldOptions = {}): PropertyDecorator {
  return field(options, { type: String, format: 'uuid' }, IsUUID(undefined, { message: 'is the id of something kept here' }));
}

export function FlagField(options: FieldOptions = {}): PropertyDecorator {
  return field(options, { type: Boolean }, IsBoolean({ message: 'is yes or no' }));
}

export function ColourField(options: FieldOptions = {}): PropertyDecorator {
  const pattern = /^#[0-9A-Fa-f]{6}$/;
  return field(options, { type: String, pattern: pattern.source }, Matches(pattern, { message: 'is a colour such as #1F5C3A' }));
}

export function EmailField(options: FieldOptions = {}): PropertyDecorator {
  const pattern = /^[^@\s\u0000]{1,64}@[^@\s\u0000.]+(\.[^@\s\u0000.]+)+$/;
  const lower = Transform(({ value }) => (typeof value === 'string' ? value.trim().toLowerCase() : value));
  return field(options, { type: String, maxLength: 254, pattern: pattern.source }, lower, Matches(pattern, { message: 'is an e-mail address' }), MaxLength(254, { message: 'has at most 254 characters' }));
}

/** Text of a form given, such as a roster number. */
export function PatternField(pattern: RegExp, message: string, options: FieldOptions = {}): PropertyDecorator {
  return field(options, { type: String, pattern: pattern.source }, IsString({ message }), Matches(pattern, { message }));
}

/** A list of records, each checked by its own fields. */
export function ListOf(of: () => Function, bounds: { least?: number; most: number }, options: FieldOptions = {}): PropertyDecorator {
  const { least = 0, most } = bounds;
  return field(
    options,
    { type: () => of() as never, isArray: true, minItems: least, maxItems: most },
    IsArray({ message: 'is a list' }),
    ArrayMinSize(least, { message: `has at least ${least} entr${least === 1 ? 'y' : 'ies'}` }),
    ArrayMaxSize(most, { message: `has at most ${most} entries` }),
    IsObject({ each: true, message: 'holds something that is no record' }),
    ValidateNested({ each: true }),
    Type(of),
  );
}

/** A list of ids. */
export function IdsField(most: number, options: FieldOptions = {}): PropertyDecorator {
  return field(
    options,
    { type: String, format: 'uuid', isArray: true, maxItems: most } as ApiPropertyOptions,
    IsArray({ message: 'is a list' }),
    ArrayMaxSize(most, { message: `has at most ${most} entries` }),
    IsUUID(undefined, { each: true, message: 'holds something that is no id' }),
  );
}

/** A list of days. */
export function DaysField(most: number, options: FieldOptions = {}): PropertyDecorator {
  return field(
    options,
    { type: 'array', items: { type: 'string', format: 'date' }, maxItems: most } as ApiPropertyOptions,
    IsArray({ message: 'is a list' }),
    ArrayMaxSize(most, { message: `has at most ${most} entries` }),
    Validate(IsDayOfTheCalendar, { each: true, message: 'holds something that is no day' }),
  );
}

/** A list of whole counts. */
export function CountsField(least: number, most: number, bounds: { most: number }, options: FieldOptions = {}): PropertyDecorator {
  return field(
    options,
    { type: 'array', items: { type: 'integer', minimum: least, maximum: most }, maxItems: bounds.most } as ApiPropertyOptions,
    IsArray({ message: 'is a list' }),
    ArrayMaxSize(bounds.most, { message: `has at most ${bounds.most} entries` }),
    IsInt({ each: true, message: 'holds only whole numbers' }),
    Min(least, { each: true, message: `holds numbers from ${least} to ${most}` }),
    Max(most, { each: true, message: `holds numbers from ${least} to ${most}` }),
  );
}

/** A list of choices. */
export function ChoicesField(choices: readonly string[], options: FieldOptions & { least?: number } = {}): PropertyDecorator {
  const least = options.least ?? 0;
  return field(
    options,
    { type: String, enum: [...choices], isArray: true, minItems: least, maxItems: choices.length } as ApiPropertyOptions,
    IsArray({ message: 'is a list' }),
    ArrayMinSize(least, { message: `has at least ${least} entr${least === 1 ? 'y' : 'ies'}` }),
    ArrayMaxSize(choices.length, { message: `has at most ${choices.length} entries` }),
    IsIn([...choices], { each: true, message: `holds only ${choices.join(', ')}` }),
  );
}

/** One record inside another. */
export function RecordField(of: () => Function, options: FieldOptions = {}): PropertyDecorator {
  return field(options, { type: () => of() as never }, IsObject({ message: 'is a record' }), ValidateNested(), Type(of));
}
