import writeExcelFile from 'write-excel-file/node';
import type { CellObject } from 'write-excel-file/node';
import type { Cell } from './cell.ts';

/** One sheet of a workbook; its first row holds the headings, which stay in sight. */
export interface WorkbookSheet {
  readonly name: string;
  readonly rows: readonly (readonly Cell[])[];
  /** rows of sums at the end, set bold */
  readonly totalRows?: number;
}

const MOST_LETTERS = 31;
const WIDEST = 60;

/**
 * An XLSX file. Amounts are numbers with two decimals, days are dates, words are words: nothing is ever a formula.
 *
 * @source ECMA-376 (Office Open XML), from memory
 */
export async function workbookOf(sheets: readonly WorkbookSheet[]): Promise<Buffer> {
  const names = namesOf(sheets);
  return writeExcelFile(
    sheets.map((sheet, place) => ({
      sheet: names[place]!,
      data: sheet.rows.map((row, line) => row.map((cell) => cellOf(cell, isBold(sheet, line)))),
      columns: widthsOf(sheet.rows).map((width) => ({ width })),
      stickyRowsCount: 1,
    })),
  ).toBuffer();
}

const isBold = (sheet: WorkbookSheet, line: number): boolean => line === 0 || line >= sheet.rows.length - (sheet.totalRows ?? 0);

function cellOf(cell: Cell, bold: boolean): CellObject | null {
  const style = bold ? { fontWeight: 'bold' as const } : {};
  if (cell === null || cell === '') return null;
  if (typeof cell === 'number') return { value: cell, type: Number, ...style };
  if (typeof cell === 'string') return { value: cell, type: String, format: '@', ...style };
  if ('cents' in cell) return { value: cell.cents / 100, type: Number, format: '#,##0.00', ...style };
  return { value: new Date(`${cell.day}T00:00:00Z`), type: Date, format: 'yyyy-mm-dd', ...style };
}

/** A sheet's name has 31 letters at most, none of them `[ ] : * ? / \`, and no other sheet has it. */
function namesOf(sheets: readonly WorkbookSheet[]): string[] {
  const taken = new Set<string>();
  return sheets.map(({ name }, place) => {
    const clean = name.replace(/[[\]:*?/\\]/g, ' ').replace(/^'+|'+$/g, '').trim().slice(0, MOST_LETTERS) || `Sheet ${place + 1}`;
    const own = taken.has(clean.toLowerCase()) ? `${clean.slice(0, MOST_LETTERS - 4)} ${place + 1}` : clean;
    taken.add(own.toLowerCase());
    return own;
  });
}

function widthsOf(rows: WorkbookSheet['rows']): number[] {
  const columns = Math.max(0, ...rows.map((row) => row.length));
  return Array.from({ length: columns }, (_, place) =>
    rows.slice(0, 500).reduce((width, row) => Math.min(WIDEST, Math.max(width, lettersOf(row[place] ?? null) + 2)), 8),
  );
}

function lettersOf(cell: Cell): number {
  if (cell === null) return 0;
  if (typeof cell === 'object') return 14;
  return String(cell).length;
}
