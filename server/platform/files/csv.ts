import { decimalText } from './cell.ts';
import type { Cell } from './cell.ts';

/** Spreadsheet programs take a file without it for Latin letters and garble names. */
const BYTE_ORDER_MARK = '\uFEFF';

/** A spreadsheet program would run a cell that begins so. */
const FORMULA = /^[=+\-@\t\r\n]/;
const PLAIN_NUMBER = /^-?\d+([.,]\d+)?$/;
const MUST_BE_QUOTED = /["\r\n]/;

/**
 * A CSV file: records end with CRLF, a field with a comma, a quote or a line break is quoted, quotes inside are doubled.
 * Words that begin like a formula get an apostrophe in front; a number stays a number. Amounts have two decimals, days
 * are `YYYY-MM-DD`.
 *
 * @source RFC 4180; the apostrophe and the byte-order mark are common practice, no source
 */
export function csvOf(rows: readonly (readonly Cell[])[]): string {
  return BYTE_ORDER_MARK + recordsOf(rows);
}

/** The same without a byte-order mark, for programs that are not spreadsheets, and with the delimiter they ask for. */
export function recordsOf(rows: readonly (readonly Cell[])[], delimiter: ',' | ';' | '\t' = ','): string {
  return rows.map((row) => `${row.map((cell) => fieldOf(cell, delimiter)).join(delimiter)}\r\n`).join('');
}

function fieldOf(cell: Cell, delimiter: string): string {
  const text = textOf(cell);
  return MUST_BE_QUOTED.test(text) || text.includes(delimiter) ? `"${text.replaceAll('"', '""')}"` : text;
}

function textOf(cell: Cell): string {
  if (cell === null) return '';
  if (typeof cell === 'number') return String(cell);
  if (typeof cell === 'string') return FORMULA.test(cell) && !PLAIN_NUMBER.test(cell) ? `'${cell}` : cell;
  return 'cents' in cell ? decimalText(cell.cents) : cell.day;
}
