import type { Day } from '../../domain/day.ts';
import type { IncomeFigures } from '../../domain/reports/income-board.ts';
import { FORMATS } from '../../platform/files/file-answer.ts';
import type { ReportFormat } from '../../platform/files/file-answer.ts';
import { ChoiceField, IdField, PatternField } from '../../platform/http/fields.ts';

const OPEN = { optional: true };

/** Three different things: what was agreed for a season, and two kinds of years. */
export const INCOME_SPANS = ['season', 'schoolYear', 'fiscalYear'] as const;
export type IncomeSpan = (typeof INCOME_SPANS)[number];

export const INCOME_TABLES = ['months', 'teams', 'schools', 'sellers'] as const;
export type IncomeTable = (typeof INCOME_TABLES)[number];

export class IncomeBoardQuery {
  /** without it, the first seller of record whose books are kept here */
  @IdField(OPEN) sellerId?: string;
  /** without it, the fiscal year */
  @ChoiceField(INCOME_SPANS, OPEN) over?: IncomeSpan;
  /** without it, the latest season */
  @IdField(OPEN) seasonId?: string;
  /** the year in which it ends; without it, that of today */
  @PatternField(/^(19|20|21)\d{2}$/, 'is a year such as 2027', OPEN) year?: string;
  /** for the screen, or a file for a spreadsheet */
  @ChoiceField(FORMATS, OPEN) as?: ReportFormat;
  /** which of the tables the file holds; without it, the months */
  @ChoiceField(INCOME_TABLES, OPEN) table?: IncomeTable;
}

export interface IncomeOfMonth extends IncomeFigures {
  /** the first day */
  month: Day;
  /** named by the calendar year in which it ends */
  fiscalYear: number;
}

export interface IncomeOfTeam extends IncomeFigures {
  /** null for what belongs to no team */
  teamId: string | null;
  teamName: string | null;
  seasonName: string | null;
  schoolName: string | null;
}

export interface IncomeOfSchool extends IncomeFigures {
  schoolId: string | null;
  schoolName: string | null;
  accountCode: string | null;
}

export interface IncomeOfSeller extends IncomeFigures {
  sellerId: string;
  sellerName: string;
}

export interface IncomeBoardView {
  sellerId: string | null;
  sellerName: string | null;
  over: IncomeSpan;
  seasonId: string | null;
  year: number | null;
  /** "Basketball 2026-27", "School year 2026–27", "Fiscal year 2027" */
  title: string;
  /** the days of a year; null for a season, whose money knows no days */
  from: Day | null;
  to: Day | null;
  today: Day;
  /** months of the year that have not begun and hold nothing yet */
  monthsToCome: number;
  months: IncomeOfMonth[];
  /** sums by fiscal year, where the months lie in more than one */
  fiscalYears: (IncomeFigures & { fiscalYear: number })[];
  teams: IncomeOfTeam[];
  schools: IncomeOfSchool[];
  /** each seller of record for the same time; books are never added up across sellers */
  sellers: IncomeOfSeller[];
  total: IncomeFigures;
  seasons: { id: string; name: string }[];
  /** the years one can ask for, by the calendar year in which they end */
  schoolYears: number[];
  fiscalYearChoices: number[];
}
