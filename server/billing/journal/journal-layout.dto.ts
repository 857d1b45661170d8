import { CODE_PART_KINDS, DAY_FORMS, DECIMAL_SIGNS, DELIMITERS, JOURNAL_FIELDS, POSITIVE_SIDES } from '../../domain/billing/journal-layout.ts';
import type { CodePartKind, JournalField, JournalLayout } from '../../domain/billing/journal-layout.ts';
import { ChoiceField, CountField, FlagField, ListOf, OptionalTextField, TextField } from '../../platform/http/fields.ts';

export class JournalColumnDto {
  @ChoiceField(JOURNAL_FIELDS) field: JournalField;
  @OptionalTextField(60) heading?: string | null;
  @OptionalTextField(60) text?: string | null;
  @CountField(1, 9, { optional: true, nullable: true }) part?: number | null;
}

export class CodeValueDto {
  /** an account's code, or the id of a school or team */
  @TextField(1, 60) key: string;
  @TextField(1, 20) text: string;
}

export class CodePartDto {
  @TextField(1, 40) name: string;
  @ChoiceField(CODE_PART_KINDS) kind: CodePartKind;
  @OptionalTextField(20) otherwise?: string | null;
  @ListOf(() => CodeValueDto, { most: 500 }, { optional: true }) values?: CodeValueDto[];
}

export class JournalLayoutDto {
  @TextField(1, 80) name: string;
  @ListOf(() => JournalColumnDto, { least: 1, most: 40 }) columns: JournalColumnDto[];
  @ListOf(() => CodePartDto, { most: 9 }) codeParts: CodePartDto[];
  @OptionalTextField(3) separator?: string | null;
  @ChoiceField(DELIMITERS) delimiter: JournalLayout['delimiter'];
  @ChoiceField(DAY_FORMS) dayForm: JournalLayout['dayForm'];
  @ChoiceField(DECIMAL_SIGNS) decimalSign: JournalLayout['decimalSign'];
  @ChoiceField(POSITIVE_SIDES) positiveIs: JournalLayout['positiveIs'];
  @FlagField() hasHeadings: boolean;
}

export interface JournalLayoutView extends JournalLayout {
  /** the seller's id: each has one layout */
  id: string;
  sellerId: string;
  sellerName: string;
  /** zero while nobody has laid the journal out and the first layout holds */
  version: number;
}
