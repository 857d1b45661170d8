import { expect, test } from 'vitest';
import { chargeInvoiced } from '../../server/domain/billing/charge.ts';
import { invoiceAmounts } from '../../server/domain/billing/invoice.ts';
import { creditApplied, creditRefunded, paymentReceived, paymentReturned } from '../../server/domain/billing/payment.ts';
import { dueToBill } from '../../server/domain/billing/due-to-bill.ts';
import { bookingDayOf } from '../../server/domain/ledger/booking-day.ts';
import { dayOf } from '../../server/domain/day.ts';
import type { Day } from '../../server/domain/day.ts';
import { centsOf } from '../../server/domain/money.ts';
import type { Posting } from '../../server/domain/ledger/posting.ts';
import { balanceOf, balancesOfPostings } from '../../server/domain/ledger/balances.ts';
import { MONEY } from '../../server/domain/ledger/account.ts';
import { positionOf } from '../../server/domain/sponsorship/apply-happening.ts';
import type { Happening } from '../../server/domain/sponsorship/happening.ts';
import { readsOfLine } from '../../server/domain/sponsorship/slot-reads.ts';
import { Books, dollars, terms } from './ledger-books.ts';

const GAME_BALLS = { kind: 'reads', lineId: 'A', name: 'Game ball', counting: 'perTerm', pricing: 'fixed', reads: 6, rateCents: dollars(75) } as const;
const CONCESSION = { kind: 'reads', lineId: 'B', name: 'Concession read', counting: 'perTerm', pricing: 'fixed', reads: 8, rateCents: dollars(40) } as const;
const PLAN = { kind: 'installments', installments: [{ on: dayOf('2026-11-23'), share: 1 }, { on: dayOf('2027-01-15'), share: 1 }] } as const;

const books = new Books();
const told: Happening[] = [];
const dated: { on: Day; posting: Posting }[] = [];
let today = '';
let closedMonths: Day[] = [];

function keep(postings: Posting[]): void {
  const on = bookingDayOf(dayOf(today), closedMonths);
  for (const posting of postings) dated.push({ on, posting });
}

function book(...happenings: Happening[]): void {
  for (const happening of happenings) {
    told.push(happening);
    keep(books.book(happening));
  }
}

const post = (postings: Posting[]) => keep(books.post(postings));

let count = 0;
const read = (lineId: string, times = 1): Happening[] =>
  Array.from({ length: times }, () => ({ kind: 'readCounted', readId: `r${(count += 1)}`, lineId }));

function invoice(invoiceId: string): void {
  const plan = { ...PLAN, installments: [...PLAN.installments] };
  const { lines } = dueToBill(plan, books.position ?? raise(), dayOf(today));
  const { netCents, taxCents } = invoiceAmounts(lines, 500);
  book({ kind: 'invoiced', invoiceId, number: invoiceId, netCents, taxCents, lines });
}

const raise = (): never => {
  throw new Error('no contract');
};

const left = (unappliedId: string) => -balanceOf(balancesOfPostings(books.postings), 'money', MONEY.unappliedCredit, { unappliedId });
const open = (invoiceId: string) => balanceOf(balancesOfPostings(books.postings), 'money', MONEY.receivable, { invoiceId });
const apply = (unappliedId: string, invoiceId: string, amount: number) =>
  post(creditApplied({ unappliedId, invoiceId, amountCents: dollars(amount) }, left(unappliedId), open(invoiceId)));

const makegood = (readId: string): Happening => ({ kind: 'makegoodGiven', makegoodId: 'M', readId });

/** The steps of the contract: the day, what happens, and what stands in the books after it. */
const STEPS: [number, string, string, () => void, string, string, number[]][] = [
  [1, '2026-11-20', 'signed', () => book({ kind: 'signed', terms: terms([GAME_BALLS, CONCESSION], 700) }), '6/0/0', '8/0/0/0', [700, 0, 0, 0, 0, 0, 0]],
  [2, '2026-11-23', 'first invoice', () => invoice('INV1'), '6/0/0', '8/0/0/0', [350, -350, 367.5, 0, -17.5, 0, 0]],
  [3, '2026-12-01', 'one of each', () => book(...read('A'), ...read('B')), '5/1/0', '7/1/0/0', [350, -245.44, 367.5, 0, -17.5, 0, -104.56]],
  [4, '2026-12-05', 'check applied', () => (post(paymentReceived('P1', dollars(367.5))), apply('P1', 'INV1', 367.5)), '5/1/0', '7/1/0/0', [350, -245.44, 0, 0, -17.5, 367.5, -104.56]],
  [5, '2026-12-08', 'one of each', () => book(...read('A'), ...read('B')), '4/2/0', '6/2/0/0', [350, -140.89, 0, 0, -17.5, 367.5, -209.11]],
  [6, '2026-12-15', 'a game ball only', () => book(...read('A')), '3/3/0', '6/2/0/0', [350, -72.71, 0, 0, -17.5, 367.5, -277.29]],
  [7, '2026-12-18', 'one and two', () => book(...read('A'), ...read('B', 2)), '2/4/0', '4/4/0/0', [350, 68.2, 0, 0, -17.5, 367.5, -418.2]],
  [8, '2027-01-05', 'a December read taken back', () => ((closedMonths = [dayOf('2026-12-01')]), book({ kind: 'readTakenBack', readId: 'r4' })), '2/4/0', '5/3/0/0', [350, 31.84, 0, 0, -17.5, 367.5, -381.84]],
  [9, '2027-01-06', 'four more for 120.00', () => book({ kind: 'amended', changes: [{ lineId: 'B', reads: 4, priceCents: dollars(120) }] }), '2/4/0', '9/3/0/0', [470, 31.84, 0, 0, -17.5, 367.5, -381.84]],
  [10, '2027-01-08', 'one and two', () => book(...read('A'), ...read('B', 2)), '1/5/0', '7/5/0/0', [470, 167.1, 0, 0, -17.5, 367.5, -517.1]],
  [11, '2027-01-15', 'second invoice', () => invoice('INV2'), '1/5/0', '7/5/0/0', [0, -302.9, 493.5, 0, -41, 367.5, -517.1]],
  [12, '2027-01-20', 'check of 300.00', () => (post(paymentReceived('P2', dollars(300))), apply('P2', 'INV2', 300)), '1/5/0', '7/5/0/0', [0, -302.9, 193.5, 0, -41, 667.5, -517.1]],
  [13, '2027-01-29', 'three, and makegood 1 of 2', () => book(...read('B', 3), { kind: 'makegoodAgreed', makegoodId: 'M', lineId: 'A', missed: 1, replacements: 2 }, makegood('m1')), '1/5/0', '4/8/0/0', [0, -202.3, 193.5, 0, -41, 667.5, -617.7]],
  [14, '2027-02-05', 'two, and makegood 2 of 2', () => ((closedMonths = [dayOf('2026-12-01'), dayOf('2027-01-01')]), book(...read('B', 2), makegood('m2'))), '0/5/1', '2/10/0/0', [0, -67.06, 193.5, 0, -41, 667.5, -752.94]],
  [15, '2027-02-15', 'two credited by memo', () => (book({ kind: 'readsCredited', lineId: 'B', count: 2, memoId: 'CM1' }), apply('CM1', 'INV2', 70.41)), '0/5/1', '0/10/2/0', [0, 0, 123.09, 0, -37.65, 667.5, -752.94]],
  [16, '2027-02-18', 'check of 150.00', () => (post(paymentReceived('P3', dollars(150))), apply('P3', 'INV2', 123.09)), '0/5/1', '0/10/2/0', [0, 0, 0, -26.91, -37.65, 817.5, -752.94]],
  [17, '2027-02-19', 'one more than promised', () => book(...read('B')), '0/5/1', '0/10/2/1', [0, 0, 0, -26.91, -37.65, 817.5, -752.94]],
  [18, '2027-02-24', 'check returned', () => post(paymentReturned({ paymentId: 'P3', amountCents: dollars(150) }, [{ unappliedId: 'P3', invoiceId: 'INV2', amountCents: dollars(123.09) }], dollars(12))), '0/5/1', '0/10/2/1', [0, 0, 123.09, 0, -37.65, 655.5, -752.94]],
  [19, '2027-02-24', 'charge for the bank fee', () => post(chargeInvoiced('INV3', dollars(12))), '0/5/1', '0/10/2/1', [0, 0, 135.09, 0, -37.65, 655.5, -752.94]],
  [20, '2027-03-02', 'transfer of 140.00', () => (post(paymentReceived('P4', dollars(140))), apply('P4', 'INV2', 123.09), apply('P4', 'INV3', 12)), '0/5/1', '0/10/2/1', [0, 0, 0, -4.91, -37.65, 795.5, -752.94]],
  [21, '2027-03-05', 'refund and close', () => (post(creditRefunded('P4', dollars(4.91), left('P4'))), book({ kind: 'closed', receivableCents: centsOf(open('INV1') + open('INV2') + open('INV3')), unappliedCents: centsOf(left('P4')) })), '0/5/1', '0/10/2/1', [0, 0, 0, 0, -37.65, 790.59, -752.94]],
];

const shown = () => {
  const [a, b] = ['A', 'B'].map((commitmentId) => (account: string) => books.balance('reads', account, { commitmentId }));
  if (!a || !b) return [];
  return [
    `${a('owed')}/${a('given')}/${a('madeGood')}`,
    `${b('owed')}/${b('given')}/${b('credited')}/${b('extra')}`,
    [
      books.balance('agreed', 'toBill') / 100,
      ...(['contractBalance', 'receivable', 'unappliedCredit', 'salesTax', 'cash', 'sponsorshipRevenue'] as const).map((account) => books.money(account)),
    ],
  ];
};

test.each(STEPS)('step %i of the golden contract, %s: %s', (_step, on, _what, happen, a, b, amounts) => {
  today = on;
  happen();
  expect(shown()).toEqual([a, b, amounts]);
});

test('the golden contract promises 6 game balls and 12 concession reads in the end, values to the cent', () => {
  expect(books.balance('reads', 'promised', { commitmentId: 'A' })).toBe(-6);
  expect(books.balance('reads', 'promised', { commitmentId: 'B' })).toBe(-12);
  const position = positionOf(told);
  expect(position?.lines.map((line) => line.values)).toEqual([
    [6819, 6818, 6818, 6818, 6818, 6818],
    [3637, 3637, 3637, 3354, 3354, 3354, 3353, 3353, 3353, 3353],
  ]);
  expect(position?.lines.map((line) => readsOfLine(line).owed)).toEqual([0, 0]);
  expect(books.money('bankCharges')).toBe(12);
  expect(books.money('feesAndInterest')).toBe(-12);
});

test('the trial balances at the month ends are those of the golden contract', () => {
  const through = (day: string) => balancesOfPostings(dated.filter(({ on }) => on <= day).map(({ posting }) => posting));
  const trial = (day: string) =>
    (['cash', 'receivable', 'contractBalance', 'unappliedCredit', 'salesTax', 'sponsorshipRevenue', 'bankCharges', 'feesAndInterest'] as const).map(
      (account) => balanceOf(through(day), 'money', MONEY[account]) / 100,
    );
  expect(trial('2026-12-31')).toEqual([367.5, 0, 68.2, 0, -17.5, -418.2, 0, 0]);
  expect(trial('2027-01-31')).toEqual([667.5, 193.5, -202.3, 0, -41, -617.7, 0, 0]);
  expect(trial('2027-03-31')).toEqual([790.59, 0, 0, 0, -37.65, -752.94, 12, -12]);
});

test('a read of a closed month that is taken back later is booked on the first open day', () => {
  expect(bookingDayOf(dayOf('2026-12-08'), [dayOf('2026-12-01')])).toBe('2027-01-01');
  expect(bookingDayOf(dayOf('2026-12-31'), [dayOf('2026-11-01')])).toBe('2026-12-31');
});
