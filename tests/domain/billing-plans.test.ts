import { describe, expect, test } from 'vitest';
import type { BillingPlan } from '../../server/domain/billing/billing-plan.ts';
import { checkPlan, checkPlanCovers } from '../../server/domain/billing/billing-plan.ts';
import { documentNumber, gapsIn, nextSeriesNumber } from '../../server/domain/billing/document-number.ts';
import { dueToBill } from '../../server/domain/billing/due-to-bill.ts';
import { dayOf } from '../../server/domain/day.ts';
import { fiscalYearOf } from '../../server/domain/day.ts';
import type { ContractTerms } from '../../server/domain/sponsorship/contract-terms.ts';
import { Books, PER_TERM, dollars, refusalOf, terms } from './ledger-books.ts';

const day = (text: string) => dayOf(text);
const FLAT = terms([PER_TERM], 1200);
const IN_FULL: BillingPlan = { kind: 'inFull', on: day('2026-11-23') };
const ARREARS: BillingPlan = { kind: 'perReadInArrears' };
const DEPOSIT: BillingPlan = { kind: 'depositAndArrears', depositCents: dollars(360), depositOn: day('2026-11-23') };
const THIRDS: BillingPlan = {
  kind: 'installments',
  installments: [{ on: day('2026-11-23'), share: 1 }, { on: day('2026-12-23'), share: 1 }, { on: day('2027-01-23'), share: 1 }],
};

function given(count: number, contract: ContractTerms = FLAT): Books {
  const books = new Books();
  books.book({ kind: 'signed', terms: contract });
  books.reading('line', count);
  return books;
}

const due = (books: Books, plan: BillingPlan, through: string) => {
  if (!books.position) throw new Error('not signed');
  return dueToBill(plan, books.position, day(through));
};

let made = 0;
function issue(books: Books, plan: BillingPlan, through: string): string {
  const { lines, netCents } = due(books, plan, through);
  const invoiceId = `INV${(made += 1)}`;
  books.book({ kind: 'invoiced', invoiceId, number: invoiceId, netCents, taxCents: dollars(0), lines });
  return invoiceId;
}

describe('in full on a day', () => {
  test('nothing is due the day before, all of it on the day, nothing once it is billed', () => {
    const books = given(0);
    expect(due(books, IN_FULL, '2026-11-22')).toEqual({ lines: [], netCents: 0, why: 'The next part falls due after 2026-11-22.' });
    expect(due(books, IN_FULL, '2026-11-23').netCents).toBe(120000);
    issue(books, IN_FULL, '2026-11-23');
    expect(due(books, IN_FULL, '2026-11-23')).toMatchObject({ netCents: 0, why: 'Everything agreed is billed.' });
  });
});

describe('installments', () => {
  test('1,000.00 in seven parts bills 142.86 five times, then 142.85 twice', () => {
    const contract = terms([PER_TERM], 1000);
    const plan: BillingPlan = { kind: 'installments', installments: ['11-01', '12-01', '12-15', '12-20', '12-24', '12-28', '12-31'].map((on) => ({ on: day(`2026-${on}`), share: 1 })) };
    expect(due(given(0, contract), plan, '2026-12-31').lines.map((line) => line.amountCents)).toEqual([14286, 14286, 14286, 14286, 14286, 14285, 14285]);
  });

  test('shares of 8, 9, 11, 7 and 5 games split 2,500.00', () => {
    const plan: BillingPlan = { kind: 'installments', installments: [8, 9, 11, 7, 5].map((share) => ({ on: day('2026-11-01'), share })) };
    expect(due(given(0, terms([PER_TERM], 2500)), plan, '2026-11-01').lines.map((line) => line.amountCents)).toEqual([50000, 56250, 68750, 43750, 31250]);
  });

  test('an installment that was billed keeps its amount; an amendment is shared by the open ones', () => {
    const books = given(0);
    issue(books, THIRDS, '2026-11-23');
    books.book({ kind: 'amended', changes: [{ lineId: 'line', reads: 2, priceCents: dollars(100) }] });
    const { lines } = due(books, THIRDS, '2027-01-23');
    expect(lines.map((line) => [line.text, line.amountCents])).toEqual([['Installment 2 of 3', 45000], ['Installment 3 of 3', 45000]]);
  });

  test('what is added after the last installment is due at once', () => {
    const books = given(0);
    issue(books, THIRDS, '2027-01-23');
    books.book({ kind: 'amended', changes: [{ lineId: 'line', reads: 2, priceCents: dollars(100) }] });
    expect(due(books, THIRDS, '2027-01-23').netCents).toBe(10000);
  });

  test('a voided installment is due again', () => {
    const books = given(0);
    const invoiceId = issue(books, THIRDS, '2026-11-23');
    books.book({ kind: 'invoiceVoided', invoiceId, number: invoiceId });
    expect(due(books, THIRDS, '2026-11-23').lines.map((line) => [line.installment, line.amountCents])).toEqual([[0, 40000]]);
  });

  test('one share above zero is enough, none is refused', () => {
    expect(refusalOf(() => checkPlan({ kind: 'installments', installments: [{ on: day('2026-11-01'), share: 1 }] }))).toBeNull();
    expect(refusalOf(() => checkPlan({ kind: 'installments', installments: [{ on: day('2026-11-01'), share: 0 }] }))).toBe('installments-without-shares');
    expect(refusalOf(() => checkPlan(ARREARS))).toBeNull();
  });
});

describe('per read in arrears', () => {
  test('three reads given are billed as 3 × 50.00, each read on one live invoice', () => {
    const books = given(3);
    const { lines } = due(books, ARREARS, '2026-12-31');
    expect(lines).toEqual([{ text: 'Concession read', amountCents: 15000, quantity: 3, unitCents: 5000, lineId: 'line', fromOrdinal: 1, toOrdinal: 3, readIds: ['read-1', 'read-2', 'read-3'] }]);
    issue(books, ARREARS, '2026-12-31');
    expect(due(books, ARREARS, '2026-12-31').netCents).toBe(0);
    books.reading();
    expect(due(books, ARREARS, '2026-12-31').lines[0]).toMatchObject({ amountCents: 5000, fromOrdinal: 4, toOrdinal: 4, readIds: ['read-4'] });
  });

  test('a billed read that is taken back and read again is not billed again', () => {
    const books = given(3);
    issue(books, ARREARS, '2026-12-31');
    books.book({ kind: 'readTakenBack', readId: 'read-2' });
    expect(due(books, ARREARS, '2026-12-31')).toMatchObject({ netCents: 0 });
    books.reading();
    expect(due(books, ARREARS, '2026-12-31').netCents).toBe(0);
    books.reading();
    expect(due(books, ARREARS, '2026-12-31').netCents).toBe(5000);
  });

  test('a billed read counted again under its own id stays on its invoice; the next one is billed with its own id', () => {
    const books = given(3);
    issue(books, ARREARS, '2026-12-31');
    books.book({ kind: 'readTakenBack', readId: 'read-1' });
    books.book({ kind: 'readCounted', readId: 'read-1', lineId: 'line' });
    expect(due(books, ARREARS, '2026-12-31').netCents).toBe(0);
    books.reading();
    expect(due(books, ARREARS, '2026-12-31').lines).toMatchObject([{ amountCents: 5000, readIds: ['read-4'] }]);
  });

  test('an earlier invoice that was voided is due again, read by read, beside the later one that stands', () => {
    const books = given(5);
    const first = issue(books, ARREARS, '2026-12-31');
    books.reading('line', 3);
    issue(books, ARREARS, '2026-12-31');
    books.book({ kind: 'invoiceVoided', invoiceId: first, number: first });
    books.reading('line', 2);
    expect(due(books, ARREARS, '2026-12-31').lines).toEqual([
      { text: 'Concession read', amountCents: 25000, quantity: 5, unitCents: 5000, lineId: 'line', fromOrdinal: 1, toOrdinal: 5, readIds: [1, 2, 3, 4, 5].map((one) => `read-${one}`) },
      { text: 'Concession read', amountCents: 10000, quantity: 2, unitCents: 5000, lineId: 'line', fromOrdinal: 9, toOrdinal: 10, readIds: ['read-9', 'read-10'] },
    ]);
    issue(books, ARREARS, '2026-12-31');
    expect(due(books, ARREARS, '2026-12-31').netCents).toBe(0);
  });

  test('a read beyond the promise is never billed', () => {
    const books = given(24);
    issue(books, ARREARS, '2026-12-31');
    books.reading();
    expect(due(books, ARREARS, '2026-12-31').netCents).toBe(0);
  });

  test('a cap of 600.00 is reached by the 24th read of 25.00 and not passed by the 25th', () => {
    const contract = terms([{ ...PER_TERM, reads: 30, pricing: 'perRead', priceEachCents: dollars(25) }], 0, { billAtMostCents: dollars(600) });
    expect(due(given(24, contract), ARREARS, '2026-12-31').netCents).toBe(60000);
    const { lines, netCents } = due(given(26, contract), ARREARS, '2026-12-31');
    expect(netCents).toBe(60000);
    expect(lines.map((line) => line.amountCents)).toEqual([65000, -5000]);
    expect(lines[1]?.text).toBe('Beyond the most agreed');
  });

  test('a least amount of 400.00 is billed up to at the close', () => {
    const contract = terms([{ ...PER_TERM, pricing: 'perRead', priceEachCents: dollars(25) }], 0, { billAtLeastCents: dollars(400) });
    const books = given(11, contract);
    expect(due(books, ARREARS, '2026-12-31').netCents).toBe(27500);
    issue(books, ARREARS, '2026-12-31');
    books.book({ kind: 'minimumClaimed' });
    expect(due(books, ARREARS, '2026-12-31').lines).toEqual([{ text: 'Up to the least amount agreed', amountCents: 12500, isMinimum: true }]);
  });

  test('reads of different value print on lines of their own that add up', () => {
    const { lines } = due(given(7, terms([{ ...PER_TERM, reads: 7 }], 1000)), ARREARS, '2026-12-31');
    expect(lines.map((line) => [line.quantity, line.unitCents])).toEqual([[5, 14286], [2, 14285]]);
  });
});

describe('deposit and arrears', () => {
  test('a deposit of 360.00 covers 5 reads; 8 print as 8 × 50.00 less deposit 360.00', () => {
    const books = given(0);
    expect(due(books, DEPOSIT, '2026-11-22').netCents).toBe(0);
    issue(books, DEPOSIT, '2026-11-23');
    books.reading('line', 5);
    expect(due(books, DEPOSIT, '2026-12-31')).toMatchObject({ netCents: 0, why: 'The reads given so far are covered by what is billed.' });
    books.reading('line', 3);
    const { lines, netCents } = due(books, DEPOSIT, '2026-12-31');
    expect(netCents).toBe(4000);
    expect(lines.map((line) => [line.text, line.quantity, line.unitCents, line.amountCents])).toEqual([
      ['Concession read', 8, 5000, 40000],
      ['Less deposit', undefined, undefined, -36000],
    ]);
    issue(books, DEPOSIT, '2026-12-31');
    books.reading('line', 2);
    expect(due(books, DEPOSIT, '2026-12-31').lines.map((line) => line.amountCents)).toEqual([10000]);
  });

  test.each([[840, 36000], [840.01, 35999], [900, 30000], [1200, 0]])('a deposit of 360.00 on 1,200.00 lowered by %d is %i cents', (by, netCents) => {
    const books = given(0);
    books.book({ kind: 'priceLowered', byCents: dollars(by) });
    expect(due(books, DEPOSIT, '2026-11-23').netCents).toBe(netCents);
  });

  test('what was billed before the start stands for the deposit, a billed read carried in does not', () => {
    const opened = new Books();
    opened.book({ kind: 'openingPosition', terms: FLAT, given: [], billedCents: dollars(1), paidCents: dollars(0), invoiceId: 'OPEN' });
    expect(due(opened, DEPOSIT, '2026-11-23').netCents).toBe(0);
    const carried = given(0);
    carried.book({ kind: 'carriedIn', carryId: 'C', fromContractId: 'last', lineId: 'line', count: 1, valuesCents: [5000], billedCents: dollars(50), taxCents: dollars(0) });
    expect(due(carried, DEPOSIT, '2026-11-23').lines).toEqual([{ text: 'Deposit', amountCents: 36000, isDeposit: true }]);
  });

  test('a deposit may run ahead of reads priced each', () => {
    const books = given(0, terms([{ ...PER_TERM, pricing: 'perRead' }], 0));
    issue(books, DEPOSIT, '2026-11-23');
    expect(books.balance('agreed', 'toBill')).toBe(-36000);
    books.reading('line', 8);
    expect(due(books, DEPOSIT, '2026-12-31').netCents).toBe(4000);
  });
});

test('a contract that ended is billed whole, whatever day its plan names', () => {
  const books = given(10);
  issue(books, THIRDS, '2026-11-23');
  books.book({ kind: 'ended', feeCents: dollars(150) });
  expect(due(books, THIRDS, '2026-11-24').netCents).toBe(25000);
});

test.each([
  ['INV', '2026-11-23', 7, 1, 'INV-2027-0001'],
  ['INV', '2026-06-30', 7, 42, 'INV-2026-0042'],
  ['KB', '2026-07-01', 7, 9999, 'KB-2027-9999'],
  ['KB', '2026-07-01', 1, 10000, 'KB-2026-10000'],
])('%s issued on %s with a fiscal year from month %i and number %i is %s', (prefix, on, month, series, number) => {
  expect(documentNumber(prefix, fiscalYearOf(day(on), month), series)).toBe(number);
});

test('the next number follows the highest, voided ones stay taken, a gap is found', () => {
  expect(nextSeriesNumber([])).toBe(1);
  expect(nextSeriesNumber([2, 1, 3])).toBe(4);
  expect(gapsIn([1, 2, 3])).toEqual([]);
  expect(gapsIn([1, 3, 5])).toEqual([2, 4]);
});

describe('installments of fixed amounts', () => {
  const fixed = (...amounts: [on: string, dollars: number][]): BillingPlan => ({ kind: 'installments', installments: amounts.map(([on, amount]) => ({ on: day(on), share: 0, amountCents: dollars(amount) })) });
  const PLAN = fixed(['2026-11-23', 500], ['2026-12-23', 400], ['2027-01-23', 200]);

  test('bill their amounts, and the last one what they leave open of the price', () => {
    const books = given(0);
    expect(due(books, PLAN, '2026-12-22').lines.map((line) => line.amountCents)).toEqual([50000]);
    expect(due(books, PLAN, '2027-01-23').lines.map((line) => [line.text, line.amountCents])).toEqual([
      ['Installment 1 of 3', 50000], ['Installment 2 of 3', 40000], ['Installment 3 of 3, with the rest of the price', 30000],
    ]);
  });

  test('the last one is the one with the last day, wherever it stands in the plan', () => {
    const plan = fixed(['2027-01-23', 200], ['2026-11-23', 500]);
    expect(due(given(0), plan, '2027-01-23').lines.map((line) => line.amountCents)).toEqual([70000, 50000]);
  });

  test('what a lowered price no longer covers is taken from the last ones, and what is billed stays', () => {
    const books = given(0);
    issue(books, PLAN, '2026-11-23');
    books.book({ kind: 'priceLowered', byCents: dollars(350) });
    expect(due(books, PLAN, '2027-01-23').lines.map((line) => line.amountCents)).toEqual([35000]);
    books.book({ kind: 'amended', changes: [{ lineId: 'line', reads: 2, priceCents: dollars(100) }] });
    expect(due(books, PLAN, '2027-01-23').lines.map((line) => line.amountCents)).toEqual([40000, 5000]);
  });

  test.each([
    ['amounts up to the price', PLAN, 1200, null],
    ['exactly the price', PLAN, 1100, null],
    ['a cent more than the price', PLAN, 1099.99, 'installments-exceed-price'],
    ['shares', THIRDS, 0, null],
  ] as const)('%s are asked at signing', (_, plan, price, code) => {
    expect(refusalOf(() => checkPlanCovers(plan, dollars(price)))).toBe(code);
  });

  test('amounts and shares do not mix', () => {
    expect(refusalOf(() => checkPlan(PLAN))).toBeNull();
    const mixed: BillingPlan = { kind: 'installments', installments: [{ on: day('2026-11-23'), share: 1 }, { on: day('2026-12-23'), share: 0, amountCents: dollars(5) }] };
    expect(refusalOf(() => checkPlan(mixed))).toBe('installments-of-two-kinds');
  });
});

describe('what was issued is never split again', () => {
  // the Alabama paradox (1880 census) and its lesson: largest remainder is not monotone
  test('a cent more would take one from the first part; it is issued, so the open parts share the rest', () => {
    const plan = (...shares: number[]): BillingPlan => ({ kind: 'installments', installments: shares.map((share, place) => ({ on: day(place === 0 ? '2026-11-01' : '2026-12-01'), share })) });
    const quotas = plan(7646, 9640, 18640, 80700, 90700, 91674);
    const books = given(0, terms([PER_TERM], 2.99));
    expect(due(books, quotas, '2026-11-01').lines.map((line) => line.amountCents)).toEqual([8]);
    issue(books, quotas, '2026-11-01');
    books.book({ kind: 'amended', changes: [{ lineId: 'line', reads: 1, priceCents: dollars(0.01) }] });
    const { lines, netCents } = due(books, quotas, '2026-12-01');
    expect([lines.length, netCents]).toEqual([5, 292]);
  });
});
