import { Entity } from 'typeorm';
import type { CodePart, JournalColumn, JournalLayout } from '../../domain/billing/journal-layout.ts';
import { DepartmentColumn, IdColumn, JsonColumn, RefColumn, TextColumn, VersionColumn } from '../../platform/database/columns.ts';

/** How a seller's journal leaves; what was exported before stays as it was. */
@Entity('journal_layout')
export class JournalLayoutRow {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() sellerId: string;
  @TextColumn() name: string;
  @JsonColumn() columns: JournalColumn[];
  @JsonColumn() codeStrings: CodePart[];
  @JsonColumn() options: Pick<JournalLayout, 'separator' | 'delimiter' | 'dayForm' | 'decimalSign' | 'positiveIs' | 'hasHeadings'>;
  @VersionColumn() version: number;
}
