import { ApiProperty } from '@nestjs/swagger';
import { Validate, ValidateIf, ValidatorConstraint } from 'class-validator';
import type { ValidatorConstraintInterface } from 'class-validator';
import type { ImportAction } from '../domain/season/import-plan.ts';
import { FlagField, IdField, SecretField } from '../platform/http/fields.ts';

@ValidatorConstraint({ name: 'isConfirmation' })
class IsConfirmation implements ValidatorConstraintInterface {
  validate(value: unknown): boolean {
    return value === false || (typeof value === 'string' && /^[0-9a-f]{64}$/.test(value));
  }

  defaultMessage(): string {
    return 'is false for a dry run, or the digest of the plan that the dry run showed';
  }
}

export class ImportDto {
  /** the file's text */
  @SecretField(1, 4_000_000) csv: string;
  @IdField() seasonId: string;
  /** false shows what would happen and writes nothing; the digest of that plan does it */
  @ApiProperty({ oneOf: [{ type: 'boolean', enum: [false] }, { type: 'string', pattern: '^[0-9a-f]{64}$' }] })
  @Validate(IsConfirmation)
  confirm: false | string;
  /** leave what the file does not name */
  @FlagField({ optional: true }) keepMissing?: boolean;
}

export class RosterImportDto extends ImportDto {
  /** the team a file without a team column is for */
  @ValidateIf((_, value) => value !== null)
  @IdField({ optional: true, nullable: true })
  teamId?: string | null;
}

export interface ImportRowView {
  /** null where no line of the file names it */
  line: number | null;
  action: ImportAction;
  sentence: string;
  /** the code of the refusal */
  reason?: string;
  field?: string;
}

export interface ImportView {
  planDigest: string;
  summary: Record<ImportAction, number>;
  rows: ImportRowView[];
  /** headings that mean nothing here */
  ignoredHeadings: string[];
  /** true once it is written */
  done: boolean;
}
