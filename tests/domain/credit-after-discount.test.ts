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
