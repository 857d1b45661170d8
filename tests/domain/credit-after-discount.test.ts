import { describe, expect, test } from 'vitest';
import { Books, PER_TERM, dollars, refusalOf, terms } from './ledger-books.ts';

/** 700.00 billed with 35.00 of tax, less a discount. */
function discounted(discount: number, taxBack = 0): Books {
  const books = new Books();
  books.book({ kind: 'signed', terms: terms([{ ...PER_TERM, reads: 14 }], 700) });
  books.invoice('INV', 700, 35);
  books.book({ kind: 'discountTaken', invoiceId: 'INV', amountCents: dollars(discount), taxCents: dollars(taxBack) });
  return books;
}

describe('the tax of a discount', () => {
  test('all the tax of the document may be given back, and not a cent more', () => {
    expect(discounted(1, 35).money('salesTax')).toBe(0);
    expect(refusalOf(() => discounted(1, 35.01))).toBe('more-than-tax');
    expect(refusalOf(() => discounted(1, 734))).toBe('more-than-tax');
  });

  test.each([[0, -32.5], [1, -32.5], [35, 0]])('with %d of it given back, a credit of 650.00 gives back no more than what is left', (taxBack, taxOfMemo) => {
    const books = discounted(14, taxBack);
    books.book({ kind: 'readsCredited', lineId: 'line', count: 13, memoId: 'CM' });
    expect(-books.position!.memos[0]!.taxCents / 100).toBeCloseTo(taxOfMemo, 2);
  });
});

describe('a price that falls after a discount', () => {
  test('ended before any read, the memo gives back what the discount left, with its tax, and the discount is gone', () => {
    const books = discounted(14);
    books.book({ kind: 'ended', memoId: 'CM', keepsMinimum: false });
    expect(books.position!.memos[0]!.parts).toEqual([{ invoiceId: 'INV', netCents: dollars(686), taxCents: dollars(34.3) }]);
    expect([books.position!.allowancesCents, books.position!.billedCents]).toEqual([0, 0]);
  });

  test.each([[1, 14], [0, 0]])('with %d of the reads given, the discount that stays is %d.00', (given, stays) => {
    const books = discounted(14);
    books.reading('line', given);
    books.book({ kind: 'ended', memoId: 'CM', keepsMinimum: false });
    expect(books.position!.allowancesCents).toBe(dollars(stays));
  });

  test('carried over before any read, no more leaves the invoice than stands on it', () => {
    const books = discounted(14);
    books.book({ kind: 'carriedOut', carryId: 'NEXT', toContractId: 'next', lineId: 'line', count: 14 });
    expect([books.position!.documents[0]!.carriedCents, books.position!.allowancesCents]).toEqual([dollars(686), 0]);
  });
});
