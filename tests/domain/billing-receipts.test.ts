import { describe, expect, test } from 'vitest';
import { amountSought } from '../../server/domain/billing/amount-sought.ts';
import { checkDeposit, overOrShort, receiptsDeposited } from '../../server/domain/billing/deposit.ts';
import { proposedApplications } from '../../server/domain/billing/proposed-applications.ts';
import { checkDrawer, checkReceipt, checkTaker } from '../../server/domain/billing/receipt.ts';
import { dayOf } from '../../server/domain/day.ts';
import { MONEY } from '../../server/domain/ledger/account.ts';
import { centsOf } from '../../server/domain/money.ts';
import { refusalOf } from './ledger-books.ts';

/** The signed change of each account, in cents. */
function changes(expectedCents: number, countedCents: number): Record<string, number> {
  const sums: Record<string, number> = {};
  for (const { from, to, amount } of receiptsDeposited(centsOf(expectedCents), centsOf(countedCents))) {
    sums[to] = (sums[to] ?? 0) + amount;
    sums[from] = (sums[from] ?? 0) - amount;
  }
  return sums;
}

const { cash, undepositedReceipts, cashOverShort } = MONEY;

describe('a deposit', () => {
  // Common practice of cash handling, no source: over is a credit, short a debit.
  test.each([
    ['to the cent', 10_000, 10_000, { [cash]: 10_000, [undepositedReceipts]: -10_000 }],
    ['a cent over', 10_000, 10_001, { [cash]: 10_001, [undepositedReceipts]: -10_000, [cashOverShort]: -1 }],
    ['a cent short', 10_000, 9_999, { [cash]: 9_999, [undepositedReceipts]: -10_000, [cashOverShort]: 1 }],
    ['of nothing at all', 10_000, 0, { [undepositedReceipts]: -10_000, [cashOverShort]: 10_000 }],
  ])('%s moves cash by what was counted and the drawer by what was expected', (_, expected, counted, sums) => {
    expect(changes(expected, counted)).toEqual(sums);
  });

  test.each([
    [0, 0, 'amount-not-above-zero'],
    [-1, 0, 'amount-not-above-zero'],
    [1, -1, 'amount-not-above-zero'],
    [1, 0, null],
  ])('of %i expected and %i counted answers %s', (expected, counted, code) => {
    expect(refusalOf(() => receiptsDeposited(centsOf(expected), centsOf(counted)))).toBe(code);
  });

  const day = dayOf('2026-12-05');
  const slip = { depositedOn: day, expectedCents: 10_000, countedCents: 10_000, receivedOn: [day] };
  test.each([
    [{}, null],
    [{ countedCents: 10_001 }, 'over-or-short-without-note'],
    [{ countedCents: 9_999 }, 'over-or-short-without-note'],
    [{ countedCents: 9_999, note: '  ' }, 'over-or-short-without-note'],
    [{ countedCents: 9_999, note: 'A quarter was foreign' }, null],
    [{ receivedOn: [dayOf('2026-12-06')] }, 'deposited-before-received'],
    [{ receivedOn: [dayOf('2026-12-04'), day] }, null],
    [{ expectedCents: 0, countedCents: 0 }, 'amount-not-above-zero'],
    [{ expectedCents: 2 ** 53, countedCents: 2 ** 53 }, 'amount-not-above-zero'],
  ])('that says %j answers %s', (change, code) => {
    expect(refusalOf(() => checkDeposit({ ...slip, ...change }))).toBe(code);
  });

  test('is over above what was expected and short below it', () => {
    expect([overOrShort(100, 101), overOrShort(100, 100), overOrShort(100, 99)]).toEqual([1, 0, -1]);
  });
});

describe('a receipt', () => {
  test.each([
    [{ method: 'check', reference: '1041' }, null],
    [{ method: 'check', reference: ' ' }, 'check-number-missing'],
    [{ method: 'check' }, 'check-number-missing'],
    [{ method: 'cash' }, null],
  ])('for %j answers %s', (form, code) => {
    expect(refusalOf(() => checkReceipt(form))).toBe(code);
  });

  test.each([
    ['cash', 'undepositedReceipts', null],
    ['check', 'undepositedReceipts', null],
    ['card', 'undepositedReceipts', 'drawer-holds-cash-and-checks'],
    ['transfer', 'undepositedReceipts', 'drawer-holds-cash-and-checks'],
    ['transfer', 'cash', null],
  ] as const)('of %s into %s answers %s', (method, drawer, code) => {
    expect(refusalOf(() => checkDrawer(method, drawer))).toBe(code);
  });

  // Common practice of cash handling, no source.
  test.each([
    ['another took it', ['Ines'], 'Odell', false, null],
    ['the same took it', ['Odell'], 'Odell', false, 'taker-may-not-post'],
    ['the same took one of two', ['Ines', 'Odell'], 'Odell', false, 'taker-may-not-post'],
    ['the same took it and the department lets them', ['Odell'], 'Odell', true, null],
    ['nobody is known to have taken it', [null], null, false, null],
    ['it was taken by nobody', [], 'Odell', false, null],
  ])('where %s is posted, or not: %s', (_, takers, personId, takerMayPost, code) => {
    const takings = takers.map((takenByPersonId) => ({ takenByPersonId }));
    expect(refusalOf(() => checkTaker(takings, personId, takerMayPost, []))).toBe(code);
  });

  test.each([
    [['Ines'], 'Ines may.'],
    [['Ines', 'Tova'], 'Ines or Tova may.'],
    [['Ines', 'Tova', 'Wren'], 'Ines, Tova or Wren may.'],
    [[], 'Nobody else here has that right yet'],
  ])('refused to its taker says who may: %j', (others, words) => {
    expect(() => checkTaker([{ takenByPersonId: 'me' }], 'me', false, others)).toThrow(words);
  });
});

describe('an amount that is looked for', () => {
  test.each([
    ['350', 35_000], ['$350', 35_000], ['$ 350', 35_000], ['350.00', 35_000], ['1234.5', 123_450], ['1,234.50', 123_450], ['1,234', 123_400], ['1,234,567.89', 123_456_789],
    ['.5', 50], ['0.05', 5], [' 12.34 ', 1_234], ['90071992547409.91', 9_007_199_254_740_991],
  ])('“%s” is %i cents', (typed, cents) => {
    expect(amountSought(typed)).toBe(cents);
  });

  test.each(['', ' ', '$', '.', '12.', '1,23', '1,2345', '12,34.00', ',123', '1.234', '-5', '0', '0.00', '1 234', 'TR-2027-0001', '350 dollars', '٣', '1e3', '90071992547409.92'])(
    '“%s” is not guessed at',
    (typed) => {
      expect(amountSought(typed)).toBeNull();
    },
  );
});

describe('the invoices that a check pays', () => {
  const open = [{ invoiceId: 'old', balanceCents: 30_000 }, { invoiceId: 'middle', balanceCents: 20_000 }, { invoiceId: 'new', balanceCents: 20_000 }];
  test.each([
    [20_000, [['middle', 20_000]]],
    [30_000, [['old', 30_000]]],
    [30_001, [['old', 30_000], ['middle', 1]]],
    [29_999, [['old', 29_999]]],
    [70_001, [['old', 30_000], ['middle', 20_000], ['new', 20_000]]],
  ])('of %i cents are the one of that balance, else the oldest first', (amount, wanted) => {
    expect(proposedApplications('check', centsOf(amount), open).map(({ invoiceId, amountCents }) => [invoiceId, amountCents])).toEqual(wanted);
  });

  test('are none where nothing is open', () => {
    expect(proposedApplications('check', centsOf(100), [])).toEqual([]);
  });
});
