import { describe, expect, test } from 'vitest';
import { positionOf } from '../../server/domain/sponsorship/apply-happening.ts';
import { amountsOf } from '../../server/domain/sponsorship/contract-amounts.ts';
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

/** 24 reads at 25.00 each, never less than 400.00: 400.00 billed as a deposit, less a discount of 8.00. */
function discountedDeposit(changes: Partial<typeof PER_TERM> = {}): Books {
  const books = new Books();
  books.book({ kind: 'signed', terms: terms([{ ...PER_TERM, ...changes, pricing: 'perRead', priceEachCents: dollars(25) }], 0, { billAtLeastCents: dollars(400) }) });
  books.invoice('INV', 400);
  books.book({ kind: 'discountTaken', invoiceId: 'INV', amountCents: dollars(8), taxCents: dollars(0) });
  return books;
}

describe('reads priced each, and a discount on the deposit', () => {
  // Of 24 reads, 16 credited take the least amount of 400.00 down to nothing.
  test.each([
    [15, { memo: 375, allowances: 8, price: 17 }],
    [16, { memo: 392, allowances: 0, price: 0 }],
    [24, { memo: 392, allowances: 0, price: 0 }],
  ])('%d reads credited give back no more than was paid, and the price does not fall below zero', (count, { memo, allowances, price }) => {
    const books = discountedDeposit();
    books.book({ kind: 'readsCredited', lineId: 'line', count, memoId: 'CM' });
    expect(books.position!.memos.map(({ netCents }) => netCents)).toEqual([dollars(memo)]);
    expect([books.position!.allowancesCents, amountsOf(books.position!).priceCents]).toEqual([dollars(allowances), dollars(price)]);
    expect(books.position!.memos[0]!.parts.every((part) => part.invoiceId === 'INV')).toBe(true);
  });

  test('ended before any read, the memo gives back what was paid', () => {
    const books = discountedDeposit();
    books.book({ kind: 'ended', memoId: 'CM', keepsMinimum: false });
    expect(books.position!.memos[0]!.parts).toEqual([{ invoiceId: 'INV', netCents: dollars(392), taxCents: 0 }]);
    expect([books.position!.allowancesCents, books.position!.billedCents, amountsOf(books.position!).priceCents]).toEqual([0, 0, 0]);
  });

  test('a discount on reads that were taken back waits for them, and is gone when the contract ends without them', () => {
    const books = new Books();
    books.book({ kind: 'signed', terms: terms([{ ...PER_TERM, pricing: 'perRead', priceEachCents: dollars(25) }], 0) });
    books.reading('line', 2);
    books.invoice('INV', 50);
    books.book({ kind: 'discountTaken', invoiceId: 'INV', amountCents: dollars(1), taxCents: dollars(0) });
    for (const readId of ['read-1', 'read-2']) books.book({ kind: 'readTakenBack', readId });
    books.book({ kind: 'readsCredited', lineId: 'line', count: 4 });
    expect([books.position!.allowancesCents, amountsOf(books.position!).priceCents]).toEqual([dollars(1), dollars(-1)]);
    books.book({ kind: 'ended', keepsMinimum: false });
    expect([books.position!.allowancesCents, amountsOf(books.position!).priceCents, amountsOf(books.position!).toBillCents]).toEqual([0, 0, dollars(-49)]);
    books.book({ kind: 'overbillingCredited', memoId: 'CM' });
    expect(books.position!.memos[0]!.parts).toEqual([{ invoiceId: 'INV', netCents: dollars(49), taxCents: 0 }]);
  });

  test('what was booked before that rule folds to the memo that was written then, and what is booked now to its own', () => {
    const books = discountedDeposit();
    const before = [...books.told];
    books.book({ kind: 'readsCredited', lineId: 'line', count: 24, memoId: 'CM' });
    const folded = positionOf([...before, { kind: 'readsCredited', lineId: 'line', count: 24, memoId: 'CM' }])!;
    expect([folded.memos[0]!.netCents, folded.allowancesCents, amountsOf(folded).priceCents]).toEqual([dollars(400), dollars(8), dollars(-8)]);
    expect(positionOf(books.told)).toEqual(books.position);
  });
});
