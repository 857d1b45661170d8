import { expect, test } from 'vitest';
import type { LineTerms } from '../../server/domain/sponsorship/contract-terms.ts';
import { explanationOf, valuesText } from '../../server/domain/sponsorship/explanation.ts';
import type { Happening } from '../../server/domain/sponsorship/happening.ts';
import { Books, PER_TERM, dollars, terms } from './ledger-books.ts';

const GAME_BALLS = { ...PER_TERM, lineId: 'A', name: 'Game ball', reads: 6, rateCents: dollars(75) };
const CONCESSION = { ...PER_TERM, lineId: 'B', reads: 8, rateCents: dollars(40) };

/** Every sum adds up, and the totals are these. */
function sums(books: Books) {
  const { sums: all, reads } = explanationOf(books.position!);
  for (const one of all) expect([one.key, one.rows.reduce((sum, row) => sum + row.amountCents, 0)]).toEqual([one.key, one.total.amountCents]);
  for (const line of reads) expect(line.parts.reduce((sum, part) => sum + part.count, 0)).toBe(line.promised);
  return Object.fromEntries(all.map((one) => [one.key, one]));
}

const books = new Books();
let count = 0;
const read = (lineId: string, times = 1): Happening[] => Array.from({ length: times }, () => ({ kind: 'readCounted', readId: `r${(count += 1)}`, lineId }));
const makegood = (readId: string): Happening => ({ kind: 'makegoodGiven', makegoodId: 'M', readId });
const invoice = (number: string, net: number, tax: number): Happening => ({
  kind: 'invoiced', invoiceId: number, number, netCents: dollars(net), taxCents: dollars(tax), lines: [{ text: 'Installment', amountCents: dollars(net) }],
});

// The golden contract, LEDGER.md section 5: earned (-SR), contract balance (CB), to bill (TB) and tax (-ST) after each step that moves them.
const STEPS: [number, Happening[], [earned: number, balance: number, toBill: number, tax: number | null]][] = [
  [1, [{ kind: 'signed', terms: terms([GAME_BALLS, CONCESSION], 700) }], [0, 0, 700, null]],
  [2, [invoice('INV1', 350, 17.5)], [0, -350, 350, 17.5]],
  [3, [...read('A'), ...read('B')], [104.56, -245.44, 350, 17.5]],
  [5, [...read('A'), ...read('B')], [209.11, -140.89, 350, 17.5]],
  [6, read('A'), [277.29, -72.71, 350, 17.5]],
  [7, [...read('A'), ...read('B', 2)], [418.2, 68.2, 350, 17.5]],
  [8, [{ kind: 'readTakenBack', readId: 'r4' }], [381.84, 31.84, 350, 17.5]],
  [9, [{ kind: 'amended', changes: [{ lineId: 'B', reads: 4, priceCents: dollars(120) }] }], [381.84, 31.84, 470, 17.5]],
  [10, [...read('A'), ...read('B', 2)], [517.1, 167.1, 470, 17.5]],
  [11, [invoice('INV2', 470, 23.5)], [517.1, -302.9, 0, 41]],
  [13, [...read('B', 3), { kind: 'makegoodAgreed', makegoodId: 'M', lineId: 'A', missed: 1, replacements: 2 }, makegood('m1')], [617.7, -202.3, 0, 41]],
  [14, [...read('B', 2), makegood('m2')], [752.94, -67.06, 0, 41]],
  [15, [{ kind: 'readsCredited', lineId: 'B', count: 2, memoId: 'CM1' }], [752.94, 0, 0, 37.65]],
  [17, read('B'), [752.94, 0, 0, 37.65]],
];

test.each(STEPS)('after step %i of the golden contract every figure is a sum that adds up to the golden one', (_step, happenings, [earned, balance, toBill, tax]) => {
  for (const happening of happenings) books.book(happening);
  const of = sums(books);
  expect([of['earned']!.total.amountCents, of['balance']!.total.amountCents, of['bridge']!.rows[0]!.amountCents, of['tax']?.total.amountCents ?? null]).toEqual(
    [dollars(earned), dollars(balance), dollars(toBill), tax === null ? null : dollars(tax)],
  );
  if (_step === 1) expect(of['price']!.rows.map((row) => row.detail)).toEqual(['1 × 68.19, 5 × 68.18', '3 × 36.37, 5 × 36.36']);
  if (_step === 9) {
    expect(of['price']!.rows[1]!.detail).toBe('3 × 36.37, 3 × 33.54, 6 × 33.53');
    expect(of['bridge']!.rows.map((row) => [row.words, row.amountCents])).toEqual([['To bill', 47_000], ['Less unbilled receivable', -3184]]);
    expect(of['bridge']!.total).toEqual({ words: 'Value of the 11 reads still owed', amountCents: 43_816 });
  }
  if (_step === 15) {
    expect(of['earned']!.rows.map((row) => row.detail)).toEqual(['5 given and 1 made good: 1 × 68.19, 5 × 68.18', '3 × 36.37, 3 × 33.54, 4 × 33.53']);
    expect(of['billed']!.rows.map((row) => row.words)).toEqual(['Invoice INV1', 'Invoice INV2', 'Less credited on INV2']);
    expect(of['balance']!.total.words).toBe('Contract balance');
  }
});

const EACH: LineTerms = { ...PER_TERM, pricing: 'perRead', priceEachCents: dollars(25) };
const signed = (lines: LineTerms[], price: number, rest = {}): Happening => ({ kind: 'signed', terms: terms(lines, price, rest) });

test.each<[string, Happening[], string, string[]]>([
  ['a cap', [signed([EACH], 0, { billAtMostCents: dollars(50) }), ...read('line', 3)], 'earned', ['Concession read 75.00', 'Beyond the most that is billed -25.00', 'Earned so far (revenue) 50.00']],
  ['a floor that is not reached', [signed([EACH], 0, { billAtLeastCents: dollars(400) }), ...read('line', 11)], 'bridge', ['To bill 400.00', 'Less unbilled receivable -275.00', 'Less the least amount agreed that reads have not reached -125.00', 'Nothing at a fixed price is still owed 0.00']],
  ['a floor that is claimed', [signed([EACH], 0, { billAtLeastCents: dollars(400) }), ...read('line', 11), { kind: 'minimumClaimed' }], 'earned', ['Concession read 275.00', 'Up to the least amount agreed 125.00', 'Earned so far (revenue) 400.00']],
  ['an early end with a fee', [signed([PER_TERM], 1200), ...read('line', 10), { kind: 'ended', feeCents: dollars(150) }], 'price', ['Concession read 500.00', 'Fees 150.00', 'Price as it stands 650.00']],
  ['an allowance', [signed([PER_TERM], 1200), ...read('line', 10), invoice('I', 1200, 60), { kind: 'allowanceGiven', amountCents: dollars(30), memoId: 'M' }], 'balance', ['Earned so far 500.00', 'Less allowances -30.00', 'Less billed -1,170.00', 'Unearned revenue -700.00']],
  ['forfeited reads', [signed([PER_TERM], 1200), { kind: 'readsForfeited', lineId: 'line', count: 4 }], 'earned', ['Concession read 0.00', 'Kept without a read 200.00', 'Earned so far (revenue) 200.00']],
  ['games that earn', [signed([{ ...PER_TERM, name: 'Bank-shot mention', counting: 'onOccurrence', reads: 0, gamesPlanned: 12 }], 600), { kind: 'gamePlayed', lineId: 'line', gameId: 'g' }], 'earned', ['Bank-shot mention, earned by games played 50.00', 'Earned so far (revenue) 50.00']],
  ['goods', [signed([PER_TERM], 1200, { inKindCents: dollars(1200) }), { kind: 'goodsReceived', goodsId: 'g', amountCents: dollars(600), what: 'balls' }], 'billed', ['Goods received 600.00', 'Billed so far 600.00']],
  ['a discount', [signed([PER_TERM], 1200), invoice('I', 350, 17.5), { kind: 'discountTaken', invoiceId: 'I', amountCents: dollars(7) }], 'billed', ['Invoice I 350.00', 'Less discount on I -7.00', 'Billed so far 343.00']],
])('%s stands as a line of its own', (_what, happenings, key, wanted) => {
  const own = new Books();
  for (const happening of happenings) own.book(happening);
  const { rows, total } = sums(own)[key]!;
  const text = (cents: number) => (cents / 100).toLocaleString('en-US', { minimumFractionDigits: 2 });
  expect([...rows, total].map((row) => `${row.words} ${text(row.amountCents)}`)).toEqual(wanted);
});

test('values of one amount stand together', () => {
  expect([valuesText([]), valuesText([5]), valuesText([6819, 6818, 6818])]).toEqual(['', '1 × 0.05', '1 × 68.19, 2 × 68.18']);
});

test('the golden contract says why its price is 752.94: revenue of 820.00 less 67.06 credited', () => {
  const [moves] = explanationOf(books.position!, [], STEPS.flatMap(([, happenings]) => happenings)).sums;
  expect([moves!.key, moves!.rows.map((row) => [row.words, row.amountCents]), moves!.total.amountCents]).toEqual(['moves', [['Price as signed', 70_000], ['Amended', 12_000], ['Credited', -6706]], 75_294]);
});

test('a fee, an allowance and an early end are told apart in how the price moved; a price that never moved is not told', () => {
  const told: Happening[] = [signed([PER_TERM], 1200), ...read('line', 10), invoice('I', 400, 20), { kind: 'allowanceGiven', amountCents: dollars(30), memoId: 'M' }, { kind: 'ended', feeCents: dollars(150), memoId: 'E' }];
  const own = new Books();
  for (const happening of told) own.book(happening);
  const [moves] = explanationOf(own.position!, [], told).sums;
  expect([...moves!.rows, moves!.total].map((row) => [row.words, row.amountCents])).toEqual([
    ['Price as signed', 120_000], ['Ended early', -70_000], ['Fee for ending early', 15_000], ['Allowances', -3000], ['Price as it stands', 62_000],
  ]);
  expect(explanationOf(own.position!, [], told.slice(0, 3)).sums[0]!.key).toBe('price');
});

test('a line is not swapped for itself', () => {
  const own = new Books();
  own.book(signed([PER_TERM], 1200));
  expect(() => own.book({ kind: 'swapped', fromLineId: 'line', fromReads: 1, toLineId: 'line', toReads: 1, priceCents: dollars(0) })).toThrow(expect.objectContaining({ code: 'swap-with-itself' }));
});
