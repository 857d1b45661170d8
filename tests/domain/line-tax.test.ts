import { describe, expect, test } from 'vitest';
import { certificateTypeOf } from '../../server/domain/billing/certificate-file.ts';
import { invoiceAmounts } from '../../server/domain/billing/invoice.ts';
import { taxByLine, withTaxable } from '../../server/domain/billing/line-tax.ts';
import { memoTaxOf } from '../../server/domain/ledger/sales-tax.ts';
import { centsOf } from '../../server/domain/money.ts';
import { Books, PER_TERM, dollars, refusalOf, terms } from './ledger-books.ts';

const amounts = (...cents: number[]) => cents.map((amountCents) => ({ amountCents: centsOf(amountCents) }));
const sum = (cents: readonly number[]) => cents.reduce((all, one) => all + one, 0);

describe('the tax of lines', () => {
  test.each([
    ['lines whose halves go up one by one', [5000, 5000, 5000], 725, [363, 362, 363]],
    ['a deposit taken off', [40000, -36000], 500, [2000, -1800]],
    ['a deposit of odd cents taken off', [33333, -11111], 725, [2417, -806]],
    ['a line of one cent', [9, 1, 10], 500, [0, 1, 0]],
    ['no tax', [5000, 5000], 0, [0, 0]],
  ])('%s re-adds to the tax of the document', (_, lines, basisPoints, taxes) => {
    expect(taxByLine(amounts(...lines), basisPoints)).toEqual(taxes);
    expect(sum(taxes)).toBe(invoiceAmounts(amounts(...lines), basisPoints).taxCents);
  });

  const TWO = [{ ...PER_TERM, lineId: 'taxed', reads: 6, rateCents: dollars(75) }, { ...PER_TERM, lineId: 'free', reads: 8, rateCents: dollars(40), isTaxed: false as const }];
  const position = () => {
    const books = new Books();
    books.book({ kind: 'signed', terms: terms(TWO, 700) });
    return books.position!;
  };
  const taxable = (...lines: { text: string; amountCents: number; lineId?: string }[]) =>
    withTaxable(position(), lines.map((line) => ({ ...line, amountCents: centsOf(line.amountCents) }))).map((line) => line.taxableCents ?? line.amountCents);

  test('a line of one commitment is taxed as that is; one over the whole by the taxed share of the price', () => {
    expect(taxable({ text: 'Taxed', amountCents: 5000, lineId: 'taxed' }, { text: 'Free', amountCents: 5000, lineId: 'free' })).toEqual([5000, 0]);
    // 409.09 of 700.00
    expect(taxable({ text: 'All', amountCents: 70000 })).toEqual([40909]);
    expect(taxable({ text: 'Half', amountCents: 35000 }, { text: 'Half', amountCents: 35000 })).toEqual([20455, 20455]);
  });

  test('a deposit taken off reads that are not taxed gives back no tax', () => {
    expect(taxable({ text: 'Free', amountCents: 20000, lineId: 'free' }, { text: 'Less deposit', amountCents: -10000 })).toEqual([0, 0]);
    expect(taxable({ text: 'Taxed', amountCents: 20000, lineId: 'taxed' }, { text: 'Less deposit', amountCents: -10000 })).toEqual([20000, -5844]);
  });

  test.each([
    ['all of it free', [TWO[1]!], 0],
    ['409.09 of 700.00 taxed', TWO, 8766],
  ])('a fee after an early end before any read, %s, is taxed as it was signed', (_, lines, taxableCents) => {
    const books = new Books();
    books.book({ kind: 'signed', terms: terms(lines, 700) });
    books.book({ kind: 'ended', feeCents: dollars(150) });
    expect(withTaxable(books.position!, [{ text: 'Fee', amountCents: dollars(150) }]).map((line) => line.taxableCents)).toEqual([taxableCents]);
  });

  test('a contract without a line that is free of tax stores nothing about it', () => {
    const books = new Books();
    books.book({ kind: 'signed', terms: terms([PER_TERM], 1200) });
    const lines = [{ text: 'All', amountCents: dollars(1200) }];
    expect(withTaxable(books.position!, lines)).toEqual(lines);
  });

  test('memos over an invoice that is taxed in part give back its tax to the cent', () => {
    const invoice = { netCents: dollars(700), taxCents: centsOf(2045) };
    let [credited, given] = [0, 0];
    for (const part of [6706, 20000, 1, 43293]) given += memoTaxOf(invoice, centsOf((credited += part)), centsOf(given));
    expect([credited, given]).toEqual([70000, 2045]);
  });
});

describe('a certificate', () => {
  const bytes = (text: string) => Uint8Array.from(text, (letter) => letter.charCodeAt(0));

  test.each([
    ['scan.pdf', '%PDF-1.4', 'application/pdf'],
    ['SCAN.PDF', '%PDF-2.0', 'application/pdf'],
    ['scan.png', '\x89PNG\r\n\x1a\n', 'image/png'],
    ['scan.JPEG', '\xff\xd8\xff\xe0', 'image/jpeg'],
  ])('%s is what its name and its first bytes say', (name, text, type) => {
    expect(certificateTypeOf(name, bytes(text))).toBe(type);
  });

  test.each([['scan.pdf', '%PDF'], ['scan.jpg', '%PDF-1.4'], ['scan.gif', 'GIF89a'], ['pdf', '%PDF-1.4'], ['scan.pdf', '']])('%s with other bytes is refused', (name, text) => {
    expect(refusalOf(() => certificateTypeOf(name, bytes(text)))).toBe('file-of-another-kind');
  });

  test('of 2 MB is taken, one byte more is not', () => {
    const of = (size: number) => bytes('%PDF-'.padEnd(size, ' '));
    expect(refusalOf(() => certificateTypeOf('scan.pdf', of(2 * 1024 * 1024)))).toBeNull();
    expect(refusalOf(() => certificateTypeOf('scan.pdf', of(2 * 1024 * 1024 + 1)))).toBe('certificate-too-large');
  });
});
