import { applyDecorators } from '@nestjs/common';
import { Transform } from 'class-transformer';
import { IsArray, IsBoolean, IsInt, IsOptional, IsString, IsUUID, Matches, Max, MaxLength, Min } from 'class-validator';
import { ApiPropertyOptional } from '@nestjs/swagger';

const toList = Transform(({ value }) => (value === undefined ? undefined : Array.isArray(value) ? value : [value]));
const toNumber = Transform(({ value }) => (value === undefined || value === '' ? undefined : Number(value)));

/** `?sort=-startsAt&page=2&perPage=25&q=…&id=a&id=b`: what every list understands. */
export class ListQuery {
  @ApiPropertyOptional({ type: String, pattern: '^-?[a-zA-Z]+$' })
  @IsOptional()
  @Matches(/^-?[a-zA-Z]{1,40}$/, { message: 'is the name of a field, with a minus in front to turn the order' })
  sort?: string;

  @ApiPropertyOptional({ type: 'integer', minimum: 1, maximum: 100000 })
  @IsOptional()
  @toNumber
  @IsInt({ message: 'is a whole number' })
  @Min(1, { message: 'is from 1 to 100000' })
  @Max(100_000, { message: 'is from 1 to 100000' })
  page?: number;

  @ApiPropertyOptional({ type: 'integer', minimum: 1, maximum: 500 })
  @IsOptional()
  @toNumber
  @IsInt({ message: 'is a whole number' })
  @Min(1, { message: 'is from 1 to 500' })
  @Max(500, { message: 'is from 1 to 500' })
  perPage?: number;

  @ApiPropertyOptional({ type: String, maxLength: 100 })
  @IsOptional()
  @IsString({ message: 'is text' })
  @MaxLength(100, { message: 'has at most 100 characters' })
  @Matches(/^[^\u0000]*$/u, { message: 'holds a character that cannot be stored' })
  q?: string;

  @ApiPropertyOptional({ type: String, isArray: true })
  @IsOptional()
  @toList
  @IsArray()
  @IsUUID(undefined, { each: true, message: 'is the id of something kept here' })
  id?: string[];
}

/** A yes or no in an address: `?isOurs=true`. */
export function QueryFlag(): PropertyDecorator {
  const toFlag = Transform(({ value }) => (value === 'true' ? true : value === 'false' ? false : value));
  return applyDecorators(ApiPropertyOptional({ type: Boolean }), IsOptional(), toFlag, IsBoolean({ message: 'is true or false' }));
}

export interface Listed<View> {
  data: View[];
  total: number;
}

/** What a list may be sorted by: the name the caller uses → the SQL it stands for. */
export type Sorts = Readonly<Record<string, string>>;

/**
 * Builds `order by … limit … offset …` from a query; an unknown sort falls back to the first.
 * Text sorts by the Unicode collation, and the id settles ties so that pages do not overlap.
 */
export function pageOf(query: ListQuery, sorts: Sorts, tie = 'id'): string {
  const name = query.sort?.replace(/^-/, '') ?? '';
  const fallback = Object.keys(sorts)[0] ?? '';
  const known = Object.hasOwn(sorts, name);
  const turned = (known ? query.sort : fallback)?.startsWith('-') ?? false;
  const by = (known ? sorts[name] : sorts[fallback]) ?? tie;
  const perPage = query.perPage ?? 25;
  return `order by ${by}${turned ? ' desc nulls last' : ' nulls last'}, ${tie} limit ${perPage} offset ${((query.page ?? 1) - 1) * perPage}`;
}

/** Collects conditions with their parameters; `$1` is the department. */
export class Conditions {
  readonly parameters: unknown[] = [];
  private readonly parts: string[];

  constructor(department: string) {
    this.parts = [`${department} = $1`];
  }

  /** Adds a condition when the value is there; `?` stands for the value. */
  add(condition: string, value: unknown): this {
    if (value === undefined || value === null || value === '') return this;
    this.parameters.push(value);
    this.parts.push(condition.replaceAll('?', `$${this.parameters.length + 1}`));
    return this;
  }

  /** Adds conditions of which one has to hold; one without its value stays out. */
  either(...choices: readonly (readonly [condition: string, value: unknown])[]): this {
    const known = choices.filter(([, value]) => value !== undefined && value !== null && value !== '');
    if (known.length === 0) return this;
    const parts = known.map(([condition, value]) => {
      this.parameters.push(value);
      return condition.replaceAll('?', `$${this.parameters.length + 1}`);
    });
    this.parts.push(`(${parts.join(' or ')})`);
    return this;
  }

  /** Adds a condition without a value. */
  when(holds: boolean | undefined, condition: string): this {
    if (holds) this.parts.push(condition);
    return this;
  }

  get where(): string {
    return this.parts.join(' and ');
  }
}

/** A text for `ilike`, with its own wildcards taken literally. */
export function contains(text: string | undefined): string | undefined {
  return text ? `%${text.replace(/[\\%_]/g, (sign) => `\\${sign}`)}%` : undefined;
}
