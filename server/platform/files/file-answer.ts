import { StreamableFile } from '@nestjs/common';
import type { Cell } from './cell.ts';
import { csvOf } from './csv.ts';
import { workbookOf } from './workbook.ts';

export const FORMATS = ['json', 'csv', 'xlsx'] as const;
export type ReportFormat = (typeof FORMATS)[number];

/** A report as rows for a spreadsheet; the first row holds the headings. */
export interface ReportTable {
  /** says what it is, whose and for when, as in `aging-Tamarack Ridge Athletics-2026-12-31` */
  fileName: string;
  sheetName: string;
  rows: Cell[][];
  /** rows of sums at the end */
  totalRows: number;
}

const TYPES = { csv: 'text/csv; charset=utf-8; header=present', xlsx: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet' } as const;

/** The report itself for the screen, or the file that was asked for. */
export async function answerIn<View>(format: ReportFormat | undefined, view: View, tableOf: (view: View) => ReportTable): Promise<View | StreamableFile> {
  if (format !== 'csv' && format !== 'xlsx') return view;
  const { fileName, sheetName, rows, totalRows } = tableOf(view);
  const bytes = format === 'csv' ? Buffer.from(csvOf(rows)) : await workbookOf([{ name: sheetName, rows, totalRows }]);
  const name = `${fileName.normalize('NFKD').replace(/[^A-Za-z0-9.-]+/g, '-').replace(/^-+|-+$/g, '')}.${format}`;
  return new StreamableFile(bytes, { type: TYPES[format], disposition: `attachment; filename="${name}"`, length: bytes.length });
}
