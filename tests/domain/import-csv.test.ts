import fc from 'fast-check';
// @ts-expect-error the package carries no types
import UntypedPapa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { Refused } from '../../server/domain/refusals.ts';
import { readCsv } from '../../server/season/csv.ts';

const Papa = UntypedPapa as {
  unparse(table: { fields: string[]; data: string[][] }, options: object): string;
  parse(text: string, options: object): { data: string[][] };
};
const read = (text: string) => readCsv(new TextEncoder().encode(text));
const refusalOf = (job: () => unknown): string => {
  try {
    job();
    return 'read';
  } catch (error) {
    return error instanceof Refused ? `${error.code} ${JSON.stringify(error.details)}` : `not a refusal: ${String(error)}`;
  }
};

describe('a CSV file as spreadsheets save it (RFC 4180)', () => {
  // RFC 4180 section 2, rules 1, 2, 6 and 7; the doubled quote is from memory.
  test.each([
    ['lines ended by CRLF, the last one too', 'a,b,c\r\naaa,bbb,ccc\r\n', { a: 'aaa', b: 'bbb', c: 'ccc' }],
    ['no line end after the last', 'a,b,c\r\naaa,bbb,ccc', { a: 'aaa', b: 'bbb', c: 'ccc' }],
    ['a line break inside quotes', 'a,b,c\r\n"aaa","b\r\nbb","ccc"\r\n', { a: 'aaa', b: 'b\r\nbb', c: 'ccc' }],
    ['a doubled quote', 'a,b,c\r\n"aaa","b""bb","ccc"', { a: 'aaa', b: 'b"bb', c: 'ccc' }],
    ['spaces are part of a field', 'a,b,c\n x , y,z', { a: ' x ', b: ' y', c: 'z' }],
    ['a byte-order mark', '\uFEFFa,b,c\n1,2,3', { a: '1', b: '2', c: '3' }],
    ['semicolons', 'a;b;c\n1;"2;5";3', { a: '1', b: '2;5', c: '3' }],
    ['semicolons with commas inside', 'a;b, and more;c\n1,5;2,5;3,5', { a: '1,5', 'b, and more': '2,5', c: '3,5' }],
    ['tabs', 'a\tb\tc\n1\t2, 3\t', { a: '1', b: '2, 3', c: '' }],
    ['empty cells after the last heading', 'a,b,c\n1,2,3,,', { a: '1', b: '2', c: '3' }],
    ['a quoted heading with a semicolon', '"a;x;y;z",b,c\n1,2,3', { 'a;x;y;z': '1', b: '2', c: '3' }],
  ])('%s', (_, text, fields) => {
    expect(read(text).rows).toEqual([{ line: 2, fields }]);
  });

  test('a row is known by the line it begins on, blank lines and broken cells counted', () => {
    const file = read('number,name\r\n5,"Xochitl\r\nOkonkwo"\r\n\r\n12,Siobhán\r\n');
    expect(file.rows.map((row) => row.line)).toEqual([2, 5]);
  });

  test('UTF-16 with its mark, as older spreadsheets save it, is read', () => {
    const text = '\uFEFFnumber,name\r\n12,Łukasz\r\n';
    const bytes = new Uint8Array(new Uint16Array([...text].map((sign) => sign.charCodeAt(0))).buffer);
    expect(readCsv(bytes).rows[0]?.fields).toEqual({ number: '12', name: 'Łukasz' });
  });

  test.each([
    ['nothing', '', 'file-empty {}'],
    ['only headings', 'a,b\r\n', 'file-empty {}'],
    ['a row with a field too many', 'a,b\n1,2\n1,2,3', 'file-row-width {"line":3,"found":3,"expected":2}'],
    ['a row with a field too few', 'a,b\n1', 'file-row-width {"line":2,"found":1,"expected":2}'],
    ['a quote that never closes', 'a,b\n1,2\n"1,2\n3,4', 'file-unreadable'],
    ['a quote in the middle of a field', 'a,b\n1"x,2', 'file-unreadable'],
    ['a picture', '\u0000\u0001PNG', 'file-not-text {}'],
    ['5,001 rows', `a\n${'1\n'.repeat(5001)}`, 'file-too-large {}'],
    ['more than 2 MB', `a\n${'x'.repeat(2 * 1024 * 1024)}`, 'file-too-large {}'],
  ])('%s is refused', (_, text, refusal) => {
    expect(refusalOf(() => read(text))).toContain(refusal);
  });

  test('5,000 rows are taken', () => {
    expect(read(`a\n${'1\n'.repeat(5000)}`).rows).toHaveLength(5000);
  });

  test('bytes that are not UTF-8 are refused', () => {
    expect(refusalOf(() => readCsv(new Uint8Array([0x61, 0x0a, 0xe9, 0x0a])))).toBe('file-not-text {}');
  });

  test('papaparse, an independent reader, reads the same cells', () => {
    const cell = fc.string({ unit: fc.constantFrom('a', 'é', '"', ',', ';', '\n', '\r\n', ' ', '7'), maxLength: 8 });
    const table = fc.integer({ min: 2, max: 5 }).chain((width) => fc.array(fc.array(cell, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 6 }));
    fc.assert(
      fc.property(table, fc.constantFrom(',', ';', '\t'), (drawn, delimiter) => {
        const cells = drawn.map(([first, ...others]) => [`x${first}`, ...others]);
        const headings = cells[0]!.map((_, place) => `column ${place}`);
        const text = Papa.unparse({ fields: headings, data: cells }, { delimiter, quotes: true, newline: '\r\n' });
        const theirs = Papa.parse(text, { delimiter, newline: '\r\n' }).data.slice(1);
        const ours = read(text).rows.map((row) => headings.map((heading) => row.fields[heading]));
        expect(ours).toEqual(theirs);
        expect(ours).toEqual(cells);
      }),
      { seed: 4180, numRuns: 300 },
    );
  });
});
