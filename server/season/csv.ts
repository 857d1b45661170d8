import { CsvError, parse } from 'csv-parse/sync';
import { refuse } from '../domain/refusals.ts';
import type { ImportFile, ImportRow } from '../domain/season/import-plan.ts';

export const MOST_BYTES = 2 * 1024 * 1024;
export const MOST_ROWS = 5_000;

const DELIMITERS = [',', ';', '\t'] as const;

/**
 * Reads a CSV file as spreadsheets save it: with or without a byte-order mark, lines ended by CRLF or LF,
 * fields parted by comma, semicolon or tab, quoted fields with doubled quotes and line breaks inside.
 *
 * @param bytes the file as it was sent; UTF-8, or UTF-16 with its mark
 * @throws Refused file-too-large, file-not-text, file-empty, file-unreadable, file-row-width
 * @source RFC 4180
 */
export function readCsv(bytes: Uint8Array): ImportFile {
  if (bytes.byteLength > MOST_BYTES) refuse('file-too-large');
  const text = textOf(bytes);
  const records = recordsOf(text, delimiterOf(text));
  const [first, ...others] = records;
  if (!first || others.length === 0) refuse('file-empty');
  if (others.length > MOST_ROWS) refuse('file-too-large');
  const headings = first.record;
  return { headings, rows: others.map((row) => rowOf(headings, row)) };
}

interface ReadRecord {
  readonly record: string[];
  readonly line: number;
}

function textOf(bytes: Uint8Array): string {
  const [one, two] = bytes;
  const encoding = one === 0xff && two === 0xfe ? 'utf-16le' : one === 0xfe && two === 0xff ? 'utf-16be' : 'utf-8';
  try {
    const text = new TextDecoder(encoding, { fatal: true }).decode(bytes);
    return text.includes('\u0000') ? refuse('file-not-text') : text;
  } catch {
    return refuse('file-not-text');
  }
}

/** The delimiter that parts the heading line into the most fields, quoted parts left out; a comma where none does. */
export function delimiterOf(text: string): string {
  const heading = headingLine(text);
  const counts = DELIMITERS.map((delimiter) => heading.split(delimiter).length);
  return DELIMITERS[counts.indexOf(Math.max(...counts))]!;
}

function headingLine(text: string): string {
  const unquoted = text.slice(0, 20_000).replace(/"(?:[^"]|"")*"/g, 'quoted');
  return unquoted.split(/\r\n|\n|\r/).find((line) => line.trim() !== '') ?? '';
}

function recordsOf(text: string, delimiter: string): ReadRecord[] {
  try {
    const read = parse(text, {
      delimiter,
      bom: true,
      info: true,
      relax_column_count: true,
      skip_empty_lines: true,
      record_delimiter: ['\r\n', '\n', '\r'],
      max_record_size: 65_536,
      // One more than allowed, so that too many is seen without reading the rest.
      to: MOST_ROWS + 2,
    }) as unknown as { record: string[]; info: { bytes: number } }[];
    return numbered(read, Buffer.from(text)).filter(({ record }) => record.some((field) => field.trim() !== ''));
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    const line = Number((error as unknown as { lines?: number }).lines ?? 1);
    return refuse('file-unreadable', { line, reason: reasonOf(error.code) });
  }
}

/**
 * The line on which each record begins, blank lines and breaks inside cells counted, as a text editor counts.
 * The reader only says at which byte a record ended.
 */
function numbered(read: readonly { record: string[]; info: { bytes: number } }[], bytes: Uint8Array): ReadRecord[] {
  let line = 1;
  let at = 0;
  return read.map(({ record, info }) => {
    while (at < info.bytes && isBreak(bytes[at])) line += breakAt(bytes, at++);
    const begins = line;
    while (at < info.bytes) line += breakAt(bytes, at++);
    return { record, line: begins };
  });
}

function isBreak(byte: number | undefined): boolean {
  return byte === 0x0a || byte === 0x0d;
}

/** 1 where a line ends at this byte: at a line feed, or at a carriage return that no line feed follows. */
function breakAt(bytes: Uint8Array, at: number): number {
  return bytes[at] === 0x0a || (bytes[at] === 0x0d && bytes[at + 1] !== 0x0a) ? 1 : 0;
}

function reasonOf(code: string): string {
  if (code === 'CSV_QUOTE_NOT_CLOSED') return 'a quoted field is never closed.';
  if (code === 'CSV_MAX_RECORD_SIZE') return 'the row is longer than a row can be; a quote may be missing.';
  return 'a quote stands where none can be; double it inside a quoted field.';
}

function rowOf(headings: readonly string[], { record, line }: ReadRecord): ImportRow {
  const hasMore = record.slice(headings.length).some((field) => field.trim() !== '');
  // Spreadsheets add empty cells at the end of a row; a cell that has words is never lost.
  if (hasMore || record.length < headings.length) {
    refuse('file-row-width', { line, found: record.length, expected: headings.length });
  }
  return { line, fields: Object.fromEntries(headings.map((heading, place) => [heading, record[place] ?? ''])) };
}
