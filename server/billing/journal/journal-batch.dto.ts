import type { Day } from '../../domain/day.ts';
import { DayField, FlagField, IdField } from '../../platform/http/fields.ts';
import { ListQuery } from '../../platform/http/lists.ts';

export class JournalBatchDto {
  @IdField() sellerId: string;
  @DayField() throughOn: Day;
  /** the month is not closed: what is booked into it later leaves in the next batch */
  @FlagField({ optional: true }) allowsOpenMonth?: boolean;
}

export class JournalPreviewQuery {
  @IdField({ optional: true }) sellerId?: string;
  @DayField({ optional: true }) throughOn?: Day;
}

export class JournalBatchListQuery extends ListQuery {
  @IdField({ optional: true }) sellerId?: string;
}

export interface JournalBatchView {
  id: string;
  number: string;
  sellerId: string;
  sellerName: string;
  throughOn: Day;
  entryCount: number;
  debitCents: number;
  madeByName: string | null;
  recordedAt: string;
  /** of the bytes, so that a file can be known again */
  sha256: string;
}

/** What a batch would hold; nothing is marked by looking. */
export interface JournalPreviewView {
  sellerId: string | null;
  sellerName: string | null;
  throughOn: Day;
  entryCount: number;
  lineCount: number;
  debitCents: number;
  /** what the layout asks for and nobody has mapped */
  missing: string[];
  /** the last day that is closed, where the preview goes beyond it */
  closedThrough: Day | null;
  reachesOpenMonth: boolean;
  /** the first lines as they will be written, without headings */
  headings: string[];
  rows: string[][];
}
