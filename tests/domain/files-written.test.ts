import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
// @ts-expect-error the package carries no types
import UntypedPapa from 'papaparse';
import readExcelFile from 'read-excel-file/node';
import { describe, expect, test } from 'vitest';
import type { Cell } from '../../server/platform/files/cell.ts';
import { csvOf } from '../../server/platform/files/csv.ts';
import { workbookOf } from '../../server/platform/files/workbook.ts';

const Papa = UntypedPapa as { parse(text: string, options: object): { data: string[][] } };

const withoutMark = (text: string) => text.replace(/^\uFEFF/, '');

describe('a CSV file that is handed out', () => {
  // RFC 4180 section 2, rules 1, 5, 6 and 7; the doubled quote is from memory.
  test.each<[string, Cell[], string]>([
    ['a record ends with CRLF, and so does the last', ['aaa', 'bbb', 'ccc'], 'aaa,bbb,ccc\r\n'],
    ['a line break is quoted', ['aaa', 'b\r\nbb', 'ccc'], 'aaa,"b\r\nbb",ccc\r\n'],
    ['a quote is quoted and doubled', ['aaa', 'b"bb', 'ccc'], 'aaa,"b""bb",ccc\r\n'],
    ['a comma is quoted', ['Duluth, MN'], '"Duluth, MN"\r\n'],
    ['spaces are part of a field', [' x ', 'y'], ' x ,y\r\n'],
    ['nothing is an empty field', [null, '', 'z'], ',,z\r\n'],
  ])('%s', (_, row, text) => {
    expect(withoutMark(csvOf([row]))).toBe(text);
  });

  // Common practice, no source: RFC 4180 knows no formulas.
  test.each<[Cell, string]>([
    ['=HYPERLINK("x")', `"'=HYPERLINK(""x"")"`],
    ['+1 555 0100', "'+1 555 0100"],
    ['@here', "'@here"],
    ['-cut', "'-cut"],
    ['-12.50-', "'-12.50-"],
    ['\tTab', "'\tTab"],
    ['-12.50', '-12.50'],
    [-12, '-12'],
    [{ cents: -1250 }, '-12.50'],
    [{ cents: 5 }, '0.05'],
    [{ cents: 123456789 }, '1234567.89'],
    [{ day: '2026-12-04' }, '2026-12-04'],
    ['Fish = chips', 'Fish = chips'],
  ])('%j is written as %s', (cell, text) => {
    expect(withoutMark(csvOf([[cell]]))).toBe(`${text}\r\n`);
  });

  test('begins with the mark by which spreadsheet programs know UTF-8, so that Nguyễn stays Nguyễn', () => {
    const bytes = Buffer.from(csvOf([['Nguyễn Thị Ngọc']]));
    expect([...bytes.subarray(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
    expect(parse(bytes, { bom: true })).toEqual([['Nguyễn Thị Ngọc']]);
  });

  test('any words come back as they were, read by two other programs', () => {
    const words = fc.string({ unit: 'grapheme', minLength: 1 }).filter((text) => !/^[=+\-@\t\r\n\uFEFF]/.test(text));
    const rows = fc.integer({ min: 1, max: 4 }).chain((width) => fc.array(fc.array(words, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 6 }));
    fc.assert(
      fc.property(rows, (table) => {
        const text = csvOf(table);
        expect(parse(text, { bom: true, record_delimiter: '\r\n' })).toEqual(table);
        expect(Papa.parse(withoutMark(text), { newline: '\r\n', delimiter: ',' }).data.slice(0, -1)).toEqual(table);
      }),
      { numRuns: 200 },
    );
  });
});

describe('a workbook that is handed out', () => {
  const rows: Cell[][] = [
    ['Sponsor', 'Invoices', 'Balance', 'Due'],
    ['=HYPERLINK("x")', 2, { cents: 123450 }, { day: '2026-12-04' }],
    ['Juniper & Pike <Hardware>', 0, { cents: -5 }, null],
  ];

  test('is read back with words as words, amounts as numbers and days as dates', async () => {
    const file = await workbookOf([{ name: 'Aging', rows }]);
    const [sheet] = await readExcelFile(file);
    expect(sheet!.data).toEqual([
      ['Sponsor', 'Invoices', 'Balance', 'Due'],
      ['=HYPERLINK("x")', 2, 1234.5, new Date('2026-12-04T00:00:00Z')],
      ['Juniper & Pike <Hardware>', 0, -0.05, null],
    ]);
  });

  test('gives each sheet a name of its own that a spreadsheet program takes', async () => {
    const sheets = ['A/R: 12/31', 'A/R: 12/31', '', 'x'.repeat(40)].map((name) => ({ name, rows }));
    const names = (await readExcelFile(await workbookOf(sheets))).map((sheet) => sheet.sheet);
    expect(names).toEqual(['A R  12 31', 'A R  12 31 2', 'Sheet 3', 'x'.repeat(31)]);
  });

  test('has bold headings and sums, and headings that stay in sight', async () => {
    const file = await workbookOf([{ name: 'Aging', rows, totalRows: 1 }]);
    const { unzipSync, strFromU8 } = await import('fflate');
    const parts = unzipSync(new Uint8Array(file));
    const page = strFromU8(parts['xl/worksheets/sheet1.xml']!);
    expect(page).toMatch(/<pane [^>]*ySplit="1"[^>]*state="frozen"/);
    expect(page).not.toContain('<f>');
    expect(strFromU8(parts['xl/styles.xml']!)).toMatch(/<b\s*\/>/);
  });
});
