import { describe, expect, test } from 'vitest';
import { receiptsDeposited } from '../../server/domain/billing/deposit.ts';
import { balanceOfInvoice, checkVoidable, checkWithinBalance, dueOn, earlyPayment, invoiceAmounts, invoiceState } from '../../server/domain/billing/invoice.ts';
import { checkPaysFor, checkSameSeller, creditApplied, creditRefunded, paymentReceived, paymentReturned, spreadOverInvoices, taxRemitted } from '../../server/domain/billing/payment.ts';
import { checkApprover, writeOffReversed } from '../../server/domain/billing/write-off.ts';
import { dayOf } from '../../server/domain/day.ts';
import { checkMoneyDay, moneyDays } from '../../server/domain/ledger/booking-day.ts';
import { memoTaxOf, salesTaxOn } from '../../server/domain/ledger/sales-tax.ts';
import { centsOf } from '../../server/domain/money.ts';
import { changesOf, dollars, refusalOf } from './ledger-books.ts';

describe('an invoice', () => {
  test('adds its lines and rounds its tax once, on the whole', () => {
    const lines = [{ amountCents: dollars(0.1) }, { amountCents: dollars(0.1) }, { amountCents: dollars(0.1) }];
    expect(invoiceAmounts(lines, 500)).toEqual({ netCents: 30, taxCents: 2, grossCents: 32 });
    expect(invoiceAmounts([{ amountCents: dollars(350) }], 500)).toEqual({ netCents: 35000, taxCents: 1750, grossCents: 36750 });
    expect(invoiceAmounts([{ amountCents: dollars(350) }], 0)).toEqual({ netCents: 35000, taxCents: 0, grossCents: 35000 });
  });

  const FACTS = { grossCents: 36750, appliedCents: 0, dueOn: dayOf('2026-02-14') };

  test.each([
    [{}, '2026-02-14', 'open'],
    [{}, '2026-02-15', 'overdue'],
    [{ appliedCents: 100 }, '2026-02-14', 'partlyPaid'],
    [{ appliedCents: 36750 }, '2026-02-15', 'paid'],
    [{ appliedCents: 36050, discountCents: 700 }, '2026-02-15', 'paid'],
    [{ appliedCents: 0, writtenOffCents: 36750 }, '2026-02-15', 'writtenOff'],
    [{ appliedCents: 36749, writtenOffCents: 1 }, '2026-02-15', 'writtenOff'],
    [{ appliedCents: 36748, writtenOffCents: 1 }, '2026-02-15', 'overdue'],
    [{ isVoid: true }, '2026-02-15', 'void'],
  ])('with %j on %s is %s', (change, today, state) => {
    expect(invoiceState({ ...FACTS, ...change }, dayOf(today))).toBe(state);
  });

  test('of January 15, net 30, is due on February 14', () => {
    expect(dueOn(dayOf('2026-01-15'), 30)).toBe('2026-02-14');
  });

  test('is voided only while nothing was done about it', () => {
    expect(refusalOf(() => checkVoidable(FACTS))).toBeNull();
    expect(refusalOf(() => checkVoidable({ ...FACTS, appliedCents: 1 }))).toBe('void-after-payment');
    expect(refusalOf(() => checkVoidable({ ...FACTS, discountCents: 1 }))).toBe('void-after-credit');
    expect(refusalOf(() => checkVoidable({ ...FACTS, writtenOffCents: 1 }))).toBe('void-after-write-off');
    expect(refusalOf(() => checkVoidable({ ...FACTS, creditedCents: 1 }))).toBe('void-after-credit');
    expect(refusalOf(() => checkVoidable({ ...FACTS, carriedCents: 1 }))).toBe('void-after-carry-over');
    expect(refusalOf(() => checkVoidable({ ...FACTS, isVoid: true }))).toBe('invoice-already-void');
  });

  test('takes no more than is open on it', () => {
    expect(refusalOf(() => checkWithinBalance(FACTS, 36750))).toBeNull();
    expect(refusalOf(() => checkWithinBalance(FACTS, 36751))).toBe('more-than-balance');
    expect(refusalOf(() => checkWithinBalance(FACTS, 0))).toBe('amount-not-above-zero');
    expect(refusalOf(() => checkWithinBalance({ ...FACTS, isVoid: true }, 1))).toBe('invoice-is-void');
    expect(balanceOfInvoice({ ...FACTS, isVoid: true })).toBe(0);
  });
});

describe('paying early', () => {
  test('2 % of 350.00 + 17.50 leaves 360.50 to pay', () => {
    expect(earlyPayment(dollars(350), dollars(17.5), 200)).toEqual({ discountCents: 700, payCents: 36050 });
  });

  test('2/10 net 30 is worth 37.24 % a year', () => {
    // arithmetic of a stored guide, which prints 37.23 %: 2/98 × 365/20
    const { discountCents, payCents } = earlyPayment(dollars(100), dollars(0), 200);
    expect(((discountCents / payCents) * 365) / 20).toBeCloseTo(0.3724, 4);
  });
});

describe('tax of memos', () => {
  test('24 memos of 50.00 at 7.25 % add up to 87.00, where rounding each alone would give 87.12', () => {
    const invoice = { netCents: dollars(1200), taxCents: dollars(87) };
    let tax = 0;
    for (let memo = 1; memo <= 24; memo += 1) tax += memoTaxOf(invoice, dollars(50 * memo), centsOf(tax));
    expect(tax).toBe(8700);
    expect(24 * salesTaxOn(dollars(50), 725)).toBe(8712);
  });

  test('an invoice of nothing gives back nothing', () => {
    expect(memoTaxOf({ netCents: dollars(0), taxCents: dollars(0) }, dollars(0), dollars(0))).toBe(0);
  });
});

describe('payments', () => {
  test('one over the balance becomes unapplied credit', () => {
    const applications = spreadOverInvoices('P', dollars(1300), [{ invoiceId: 'A', balanceCents: 50000 }, { invoiceId: 'B', balanceCents: 0 }, { invoiceId: 'C', balanceCents: 76000 }]);
    expect(applications).toEqual([
      { unappliedId: 'P', invoiceId: 'A', amountCents: 50000 },
      { unappliedId: 'P', invoiceId: 'C', amountCents: 76000 },
    ]);
    expect(130000 - applications.reduce((sum, one) => sum + one.amountCents, 0)).toBe(4000);
  });

  test('a check waits in the drawer until it is deposited', () => {
    expect(changesOf([...paymentReceived('P', dollars(10), 'undepositedReceipts'), ...receiptsDeposited(dollars(10), dollars(10))])).toEqual({ cash: 10, UC: -10 });
  });

  test('no more is applied or refunded than is left, and none of nothing', () => {
    const application = { unappliedId: 'P', invoiceId: 'A', amountCents: dollars(5) };
    expect(refusalOf(() => creditApplied(application, 500, 500))).toBeNull();
    expect(refusalOf(() => creditApplied(application, 499, 500))).toBe('more-than-unapplied');
    expect(refusalOf(() => creditApplied(application, 500, 499))).toBe('more-than-balance');
    expect(refusalOf(() => creditRefunded('P', dollars(5), 500))).toBeNull();
    expect(refusalOf(() => creditRefunded('P', dollars(5), 499))).toBe('more-than-unapplied');
    expect(refusalOf(() => paymentReceived('P', dollars(0)))).toBe('amount-not-above-zero');
  });

  test('a returned one leaves without a fee where the bank took none', () => {
    expect(changesOf(paymentReturned({ paymentId: 'P', amountCents: dollars(10) }, [], dollars(0)))).toEqual({ UC: 10, cash: -10 });
    expect(refusalOf(() => paymentReturned({ paymentId: 'P', amountCents: dollars(10), refundedCents: 1 }, [], dollars(0)))).toBe('more-than-unapplied');
  });

  test('never cross sellers of record', () => {
    expect(refusalOf(() => checkSameSeller('school', 'school'))).toBeNull();
    expect(refusalOf(() => checkSameSeller('school', 'club'))).toBe('payment-crosses-sellers');
  });

  test('of one that was written down by mistake, the drawer is emptied again and the bank is left alone', () => {
    expect(changesOf(paymentReturned({ paymentId: 'P', amountCents: dollars(10) }, [], dollars(0), 'undepositedReceipts'))).toEqual({ UC: 10, drawer: -10 });
  });

  test.each([
    [{ payerId: 'store', sponsorId: null }, { payerId: 'store', sponsorId: null }, null],
    [{ payerId: 'store', sponsorId: 'hardware' }, { payerId: 'head office', sponsorId: 'hardware' }, null],
    [{ payerId: 'store', sponsorId: 'hardware' }, { payerId: 'head office', sponsorId: 'tires' }, 'payment-of-another-payer'],
    [{ payerId: 'store', sponsorId: null }, { payerId: 'head office', sponsorId: null }, 'payment-of-another-payer'],
  ])('of %j for an invoice of %j: %s', (payment, invoice, refusal) => {
    expect(refusalOf(() => checkPaysFor(payment, invoice))).toBe(refusal);
  });

  test('tax goes on to the state', () => {
    expect(changesOf(taxRemitted(dollars(37.65)))).toEqual({ ST: 37.65, cash: -37.65 });
  });

  test('only what was written off comes back', () => {
    expect(refusalOf(() => writeOffReversed('A', dollars(1), 100))).toBeNull();
    expect(refusalOf(() => writeOffReversed('A', dollars(1), 99))).toBe('more-than-balance');
    expect(refusalOf(() => writeOffReversed('A', dollars(1), 0))).toBe('nothing-written-off');
  });
});

describe('the day of money', () => {
  const days = (startsInMonth: number) => moneyDays(dayOf('2026-11-27'), startsInMonth);

  // common practice, no source: this fiscal year, the next one, and ten before
  test.each([
    [7, '2016-07-01', '2028-06-30'],
    [1, '2016-01-01', '2027-12-31'],
  ])('with years that begin in month %i lies between %s and %s', (startsInMonth, first, last) => {
    expect(days(startsInMonth)).toEqual({ first, last });
  });

  test.each([
    ['2028-06-30', null],
    ['2028-07-01', 'day-too-far-ahead'],
    ['2016-07-01', null],
    ['2016-06-30', 'day-too-long-ago'],
  ])('%s: %s', (on, refusal) => {
    expect(refusalOf(() => checkMoneyDay(dayOf(on), days(7)))).toBe(refusal);
  });
});

describe('who approves a write-off', () => {
  test.each([
    [false, ['director'], null],
    [true, ['director', 'bookkeeper'], null],
    [true, ['director'], 'write-off-needs-another'],
  ] as const)('who asked is who approves: %s, as %j: %s', (same, roles, refusal) => {
    expect(refusalOf(() => checkApprover(same, roles))).toBe(refusal);
  });
});
