import { refuse } from '../refusals.ts';
import type { ImportFile } from './import-plan.ts';
import { problem } from './import-plan.ts';
import type { ImportProblem } from './import-plan.ts';

/** The columns an import knows: each with the headings it is recognised by. */
export interface Columns<Column extends string> {
  readonly headings: Readonly<Record<Column, readonly string[]>>;
  /** of each group at least one column must be there */
  readonly needed: readonly (readonly Column[])[];
}

/** A row whose cells are asked for by column. */
export interface Cells<Column extends string> {
  readonly line: number;
  /** the cell without spaces at its ends; empty text where the column or the cell is empty */
  cell(column: Column): string;
}

/**
 * Finds the columns by their headings, in any order, without regard to capitals, accents, spaces and
 * signs. A heading that means nothing is left out.
 *
 * @throws Refused heading-missing, heading-twice, file-empty
 */
export function cellsOf<Column extends string>(
  file: ImportFile,
  columns: Columns<Column>,
): { rows: Cells<Column>[]; ignored: string[]; has: (column: Column) => boolean } {
  const headingOf = new Map<Column, string>();
  const ignored: string[] = [];
  const twice: string[] = [];
  for (const heading of file.headings) {
    const column = columnOf(heading, columns);
    if (column === null) ignored.push(heading.trim());
    else if (headingOf.has(column)) twice.push(`${headingOf.get(column)!.trim()}, ${heading.trim()}`);
    else headingOf.set(column, heading);
  }
  if (twice.length > 0) refuse('heading-twice', { columns: twice.join('; ') });
  const missing = columns.needed.filter((group) => !group.some((column) => headingOf.has(column)));
  if (missing.length > 0) {
    refuse('heading-missing', { columns: missing.map((group) => group.map((column) => columns.headings[column][0]).join(' or ')).join(', ') });
  }
  const rows = file.rows
    .filter((row) => Object.values(row.fields).some((value) => value.trim() !== ''))
    .map((row) => ({
      line: row.line,
      cell: (column: Column) => (row.fields[headingOf.get(column) ?? ''] ?? '').trim(),
    }));
  if (rows.length === 0) refuse('file-empty');
  return { rows, ignored: ignored.filter((heading) => heading !== ''), has: (column) => headingOf.has(column) };
}

function columnOf<Column extends string>(heading: string, columns: Columns<Column>): Column | null {
  const plain = foldedText(heading);
  const known = Object.entries(columns.headings) as [Column, readonly string[]][];
  return known.find(([column, names]) => foldedText(column) === plain || names.some((name) => foldedText(name) === plain))?.[0] ?? null;
}

/** Letters that Unicode does not take apart into a plain letter and its mark, as lists without accents write them. */
const PLAIN_LETTERS: Readonly<Record<string, string>> = { ł: 'l', đ: 'd', ð: 'd', ø: 'o', ß: 'ss', æ: 'ae', œ: 'oe', ı: 'i', þ: 'th', ħ: 'h' };

/** Text as it is compared: small letters and digits, without accents, signs and doubled spaces. */
export function foldedText(text: string): string {
  return text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[łđðøßæœıþħ]/g, (letter) => PLAIN_LETTERS[letter]!)
    .replace(/[^\p{L}\p{N}@#]+/gu, ' ')
    .trim();
}

/** A cell that must not be empty and not longer than the field. */
export function textProblem(line: number, field: string, value: string, most: number, needed: boolean): ImportProblem[] {
  if (value === '') return needed ? [problem(line, field, 'import-value-missing')] : [];
  return value.length > most ? [problem(line, field, 'import-value-too-long', { most })] : [];
}
