import { describe, expect, test } from 'vitest';
import { chargeInvoiced } from '../../server/domain/billing/charge.ts';
import { creditApplied, creditRefunded, paymentReceived, paymentReturned } from '../../server/domain/billing/payment.ts';
import { invoiceWrittenOff, writeOffReversed, writeOffUndoneByMemo } from '../../server/domain/billing/write-off.ts';
import { dayOf } from '../../server/domain/day.ts';
import type { Posting } from '../../server/domain/ledger/posting.ts';
import { carriedFiguresOf, effectOf } from '../../server/domain/sponsorship/apply-happening.ts';
import type { ContractTerms, ReadLine } from '../../server/domain/sponsorship/contract-terms.ts';
import type { Happening } from '../../server/domain/sponsorship/happening.ts';
import { Books, PER_TERM, changesOf, dollars, refusalOf, terms } from './ledger-books.ts';

/** 24 reads for 1,200.00, each worth 50.00. */
const FLAT = terms([PER_TERM], 1200);
const each = (priceEach: number, rest: Partial<ReadLine> = {}): ReadLine => ({ ...PER_TERM, pricing: 'perRead', priceEachCents: dollars(priceEach), ...rest });
const games = (names: string, reads = 2) => [...names].map((gameId) => ({ gameId, reads }));
const PER_GAME = terms([{ ...PER_TERM, counting: 'perGame', reads: 2, games: games('abcdefghijkl') }], 1200);
const MOVES_ON: ContractTerms = { ...PER_GAME, cancelledGame: 'valueMovesOn' };

function signed(contract: ContractTerms, given = 0): Books {
  const books = new Books();
  books.book({ kind: 'signed', terms: contract });
  books.reading('line', given);
  return books;
}

function billed(contract: ContractTerms, given = 0, net = 1200, tax = net * 0.05): Books {
  const books = signed(contract, given);
  books.invoice('INV', net, tax);
  return books;
}

const credit = (count: number): Happening => ({ kind: 'readsCredited', lineId: 'line', count, memoId: 'CM' });

/** happening, what the books were before, what is done, what it posts */
const ROWS: [string, () => Books, (books: Books) => Posting[], Record<string, number>][] = [
  ['1 signing makes 24 reads owed and 1,200.00 to bill', () => new Books(), (b) => b.book({ kind: 'signed', terms: FLAT }), { promised: -24, owed: 24, P: -1200, TB: 1200 }],
  ['2 an invoice over half', () => signed(FLAT), (b) => b.invoice('INV', 600, 30), { TB: -600, BL: 600, AR: 630, CB: -600, ST: -30 }],
  ['3 a read counted at sign-off earns its value', () => signed(FLAT), (b) => b.reading(), { owed: -1, given: 1, CB: 50, SR: -50 }],
  ['4 three reads given', () => signed(FLAT), (b) => b.reading('line', 3), { owed: -3, given: 3, CB: 150, SR: -150 }],
  ['4 an invoice in arrears for them', () => signed(FLAT, 3), (b) => b.invoice('INV', 150), { TB: -150, BL: 150, AR: 150, CB: -150 }],
  ['6 a read priced at 25.00', () => signed(terms([each(25)], 0)), (b) => b.reading(), { owed: -1, given: 1, P: -25, TB: 25, CB: 25, SR: -25 }],
  ['7 the 24th read of 25.00 reaches the cap of 600.00', () => signed(terms([each(25, { reads: 30 })], 0, { billAtMostCents: dollars(600) }), 23), (b) => b.reading(), { owed: -1, given: 1, P: -25, TB: 25, CB: 25, SR: -25 }],
  ['7 the 25th is given and earns nothing', () => signed(terms([each(25, { reads: 30 })], 0, { billAtMostCents: dollars(600) }), 24), (b) => b.reading(), { owed: -1, given: 1 }],
  ['7 one of 25 taken back earns no less', () => signed(terms([each(25, { reads: 30 })], 0, { billAtMostCents: dollars(600) }), 25), (b) => b.book({ kind: 'readTakenBack', readId: 'read-25' }), { owed: 1, given: -1 }],
  ['7 the next taken back earns 25.00 less', () => signed(terms([each(25, { reads: 30 })], 0, { billAtMostCents: dollars(600) }), 24), (b) => b.book({ kind: 'readTakenBack', readId: 'read-1' }), { owed: 1, given: -1, P: 25, TB: -25, CB: -25, SR: 25 }],
  ['8 signing with a least amount of 400.00', () => new Books(), (b) => b.book({ kind: 'signed', terms: terms([each(25)], 0, { billAtLeastCents: dollars(400) }) }), { promised: -24, owed: 24, P: -400, TB: 400 }],
  ['8 the least amount at the close, 275.00 earned', () => signed(terms([each(25)], 0, { billAtLeastCents: dollars(400) }), 11), (b) => b.book({ kind: 'minimumClaimed' }), { CB: 125, UR: -125 }],
  ['9 the 11th occurrence of at least 10', () => occurring(10, 10), (b) => b.book({ kind: 'occurrenceCounted', occurrenceId: 'o11', lineId: 'line' }), { promised: -1, owed: 1 }],
  ['9 the 31st occurrence of at most 30', () => occurring(30, 0), (b) => b.book({ kind: 'occurrenceCounted', occurrenceId: 'o31', lineId: 'line' }), {}],
  ['9 the 10th mention holds a value', () => occurring(12, 9), (b) => b.reading(), { owed: -1, given: 1, CB: 50, SR: -50 }],
  ['9 the 11th mention has no money value at a flat price', () => occurring(12, 10), (b) => b.reading(), { owed: -1, given: 1 }],
  ['9 a mention priced each earns beyond the least', () => occurring(12, 10, each(25)), (b) => b.reading(), { owed: -1, given: 1, P: -25, TB: 25, CB: 25, SR: -25 }],
  ['10 a read beyond the promise', () => signed(FLAT, 24), (b) => b.reading(), { extra: 1, unpromised: -1 }],
  ['11 a billed read taken back, no extra waiting', () => billed(FLAT, 5), (b) => b.book({ kind: 'readTakenBack', readId: 'read-2' }), { given: -1, owed: 1, CB: -50, SR: 50 }],
  ['12 a read taken back while an extra waits', () => signed(FLAT, 25), (b) => b.book({ kind: 'readTakenBack', readId: 'read-2' }), { extra: -1, unpromised: 1 }],
  ['13 a billed read priced each taken back is overbilled', () => billed(terms([each(25)], 0), 4, 100, 0), (b) => b.book({ kind: 'readTakenBack', readId: 'read-4' }), { given: -1, owed: 1, P: 25, TB: -25, CB: -25, SR: 25 }],
  ['13 the overbilled part is credited at the close', () => overbilled(), (b) => b.book({ kind: 'overbillingCredited', memoId: 'CM' }), { BL: -25, TB: 25, CB: 25, UC: -25 }],
  ['15 a makegood 1 for 2 settles nothing with the first', () => makegood(1, 2, 0), (b) => b.book({ kind: 'makegoodGiven', makegoodId: 'M', readId: 'm1' }), {}],
  ['15 and the missed read with the second', () => makegood(1, 2, 1), (b) => b.book({ kind: 'makegoodGiven', makegoodId: 'M', readId: 'm2' }), { owed: -1, madeGood: 1, CB: 50, SR: -50 }],
  ['15 of a makegood 2 for 3 the second settles the first missed', () => makegood(2, 3, 1), (b) => b.book({ kind: 'makegoodGiven', makegoodId: 'M', readId: 'm2' }), { owed: -1, madeGood: 1, CB: 50, SR: -50 }],
  ['15 a makegood read taken back is owed again', () => makegood(1, 1, 1), (b) => b.book({ kind: 'readTakenBack', readId: 'm1' }), { owed: 1, madeGood: -1, CB: -50, SR: 50 }],
  ['16 two reads credited before anything is billed', () => signed(FLAT), (b) => b.book({ kind: 'readsCredited', lineId: 'line', count: 2 }), { owed: -2, credited: 2, P: 100, TB: -100 }],
  ['17 the same, all billed', () => billed(FLAT), (b) => b.book(credit(2)), { owed: -2, credited: 2, P: 100, BL: -100, CB: 100, ST: 5, UC: -105 }],
  ['17 the same, 60.00 still to bill', () => billed(FLAT, 0, 1140), (b) => b.book(credit(2)), { owed: -2, credited: 2, P: 100, TB: -60, BL: -40, CB: 40, ST: 2, UC: -42 }],
  ['17 the memo is applied', () => (({ b }) => (b.book(credit(2)), b))({ b: billed(FLAT) }), (b) => b.post(creditApplied({ unappliedId: 'CM', invoiceId: 'INV', amountCents: dollars(105) }, 10500, 126000)), { UC: 105, AR: -105 }],
  ['18 a concession on reads already given', () => billed(FLAT, 6), (b) => b.book({ kind: 'allowanceGiven', amountCents: dollars(30), memoId: 'CM' }), { P: 30, BL: -30, AL: 30, ST: 1.5, UC: -31.5 }],
  ['19 a cancelled game with two reads, terms "credit", unbilled', () => signed(PER_GAME), (b) => b.book({ kind: 'gameCancelled', gameId: 'c' }), { owed: -2, credited: 2, P: 100, TB: -100 }],
  ['19 the same, billed', () => billed(PER_GAME), (b) => b.book({ kind: 'gameCancelled', gameId: 'c', memoId: 'CM' }), { owed: -2, credited: 2, P: 100, BL: -100, CB: 100, ST: 5, UC: -105 }],
  ['20 the same, terms "value moves on"', () => signed(MOVES_ON), (b) => b.book({ kind: 'gameCancelled', gameId: 'c' }), { owed: -2, released: 2 }],
  ['20 the same, nothing open any more', () => allGivenBut('l', MOVES_ON), (b) => b.book({ kind: 'gameCancelled', gameId: 'l' }), { owed: -2, released: 2, CB: 100, UR: -100 }],
  ['21 four reads forfeited by the sponsor', () => billed(FLAT, 20), (b) => b.book({ kind: 'readsForfeited', lineId: 'line', count: 4 }), { owed: -4, released: 4, CB: 200, UR: -200 }],
  ['22 a game added at a flat price', () => signed(PER_GAME), (b) => b.book({ kind: 'gameAdded', gameId: 'z', lines: [{ lineId: 'line', reads: 2 }] }), { promised: -2, owed: 2 }],
  ['23 six more at the rate card', () => signed(FLAT, 10), (b) => b.book({ kind: 'amended', changes: [{ lineId: 'line', reads: 6, priceCents: dollars(300) }] }), { promised: -6, owed: 6, P: -300, TB: 300 }],
  ['23 six more for less', () => signed(FLAT, 10), (b) => b.book({ kind: 'amended', changes: [{ lineId: 'line', reads: 6, priceCents: dollars(240) }] }), { promised: -6, owed: 6, P: -240, TB: 240 }],
  ['24 the price lowered by 100.00 after 10 given, billed', () => billed(FLAT, 10, 1200, 0), (b) => b.book({ kind: 'priceLowered', byCents: dollars(100), memoId: 'CM' }), { P: 100, BL: -100, CB: 100, UC: -100 }],
  ['26 ended after 10 of 24, billed, for a fee of 150.00', () => billed(FLAT, 10, 1200, 0), (b) => b.book({ kind: 'ended', feeCents: dollars(150), memoId: 'CM' }), { promised: 14, owed: -14, P: 550, BL: -700, TB: 150, CB: 850, UC: -700, UR: -150 }],
  ['26 the fee is invoiced', () => (({ b }) => (b.book({ kind: 'ended', feeCents: dollars(150), memoId: 'CM' }), b))({ b: billed(FLAT, 10, 1200, 0) }), (b) => b.invoice('INV2', 150), { TB: -150, BL: 150, AR: 150, CB: -150 }],
  ['27 five swapped for four at 40.00 more', () => signed(FLAT, 10), (b) => b.book({ kind: 'swapped', fromLineId: 'line', fromReads: 5, toLineId: 'B', toReads: 4, toLine: { ...PER_TERM, lineId: 'B', reads: 4 }, priceCents: dollars(40) }), { promised: 1, owed: -1, P: -40, TB: 40 }],
  ['29b a read logged late, after the credit', () => creditedDown(), (b) => b.reading(), { extra: 1, unpromised: -1 }],
  ['30 goods worth 600.00 for 12 reads arrive', () => signed(IN_KIND), (b) => b.book({ kind: 'goodsReceived', goodsId: 'g', amountCents: dollars(600), what: 'Printed programs' }), { TB: -600, BL: 600, goods: 600, CB: -600 }],
  ['30 a read paid in goods', () => signed(IN_KIND), (b) => b.reading(), { owed: -1, given: 1, CB: 50, IR: -50 }],
  ['31 the invoice voided after 6 given', () => billed(FLAT, 6), (b) => b.book({ kind: 'invoiceVoided', invoiceId: 'INV', number: 'INV' }), { BL: -1200, TB: 1200, AR: -1260, CB: 1200, ST: 60 }],
  ['32 1,300.00 paid on 1,260.00', () => billed(FLAT), (b) => b.post(paymentReceived('P', dollars(1300))), { cash: 1300, UC: -1300 }],
  ['32 1,260.00 of it applied', () => billed(FLAT), (b) => b.post(creditApplied({ unappliedId: 'P', invoiceId: 'INV', amountCents: dollars(1260) }, 130000, 126000)), { UC: 1260, AR: -1260 }],
  ['32 the 40.00 over refunded', () => billed(FLAT), (b) => b.post(creditRefunded('P', dollars(40), 4000)), { UC: 40, cash: -40 }],
  ['33 a check returned, bank fee 12.00', () => billed(FLAT), (b) => b.post(paymentReturned({ paymentId: 'P', amountCents: dollars(1260) }, [{ unappliedId: 'P', invoiceId: 'INV', amountCents: dollars(1260) }], dollars(12))), { AR: 1260, cash: -1272, bank: 12 }],
  ['33 the fee charged on', () => billed(FLAT), (b) => b.post(chargeInvoiced('INV3', dollars(12))), { AR: 12, fees: -12 }],
  ['35 2 % for paying 350.00 + 17.50 early', () => billed(FLAT, 0, 350), (b) => [...b.book({ kind: 'discountTaken', invoiceId: 'INV', amountCents: dollars(7) }), ...b.post(paymentReceived('P', dollars(360.5))), ...b.post(creditApplied({ unappliedId: 'P', invoiceId: 'INV', amountCents: dollars(360.5) }, 36050, 36050))], { P: 7, BL: -7, cash: 360.5, AL: 7, AR: -367.5 }],
  ['36 written off, gross of tax', () => billed(FLAT, 24), (b) => b.post(invoiceWrittenOff('INV', dollars(1260), 126000, 0)), { BD: 1260, AR: -1260 }],
  ['37 a memo on a written-off invoice stands it open first', () => billed(FLAT, 22), (b) => [...b.post(writeOffReversed('INV', dollars(105), 126000)), ...b.book(credit(2)), ...b.post(creditApplied({ unappliedId: 'CM', invoiceId: 'INV', amountCents: dollars(105) }, 10500, 10500))], { owed: -2, credited: 2, P: 100, BL: -100, CB: 100, ST: 5, BD: -105 }],
  ['38 200.00 recovered', () => billed(FLAT, 24), (b) => [...b.post(writeOffReversed('INV', dollars(200), 126000)), ...b.post(paymentReceived('P', dollars(200))), ...b.post(creditApplied({ unappliedId: 'P', invoiceId: 'INV', amountCents: dollars(200) }, 20000, 20000))], { BD: -200, cash: 200 }],
  ['39 taken over in mid-season: 10 given, 800.00 billed, 200.00 paid', () => new Books(), (b) => b.book({ kind: 'openingPosition', terms: FLAT, given: [{ lineId: 'line', count: 10 }], billedCents: dollars(800), paidCents: dollars(200), invoiceId: 'OPEN' }), { promised: -24, given: 10, owed: 14, P: -1200, BL: 800, TB: 400, AR: 600, CB: -300, opening: -300 }],
];

const IN_KIND = terms([{ ...PER_TERM, reads: 12 }], 600, { inKindCents: dollars(600) });

function occurring(occurrences: number, given: number, priced: ReadLine = PER_TERM): Books {
  const price = priced.pricing === 'fixed' ? 500 : 0;
  const books = signed(terms([{ ...priced, counting: 'onOccurrence', reads: 0, readsAtLeast: 10, readsAtMost: 30 }], price));
  for (let one = 1; one <= occurrences; one += 1) books.book({ kind: 'occurrenceCounted', occurrenceId: `o${one}`, lineId: 'line' });
  books.reading('line', given);
  return books;
}

function overbilled(): Books {
  const books = billed(terms([each(25)], 0), 4, 100, 0);
  books.book({ kind: 'readTakenBack', readId: 'read-4' });
  return books;
}

function makegood(missed: number, replacements: number, given: number): Books {
  const books = signed(FLAT);
  books.book({ kind: 'makegoodAgreed', makegoodId: 'M', lineId: 'line', missed, replacements });
  for (let one = 1; one <= given; one += 1) books.book({ kind: 'makegoodGiven', makegoodId: 'M', readId: `m${one}` });
  return books;
}

function allGivenBut(gameId: string, contract: ContractTerms): Books {
  const books = signed(contract);
  for (const game of 'abcdefghijkl') if (game !== gameId) books.reading('line', 2, game);
  return books;
}

function creditedDown(): Books {
  const books = billed(FLAT, 22);
  books.book(credit(2));
  return books;
}

test.each(ROWS)('row %s', (_name, before, happen, changes) => {
  expect(changesOf(happen(before()))).toEqual(changes);
});

describe('what the rows say beside their postings', () => {
  test('14 reads not given leave the books as they are: a shortfall is only computed', () => {
    const books = billed(FLAT, 20);
    expect(books.balance('reads', 'owed')).toBe(4);
  });

  test('17 twenty-four credits of 50.00 at 7.25 % give back 87.00 of tax, not 87.12', () => {
    const books = billed(FLAT, 0, 1200, 87);
    for (let one = 1; one <= 24; one += 1) books.book({ kind: 'readsCredited', lineId: 'line', count: 1, memoId: `CM${one}` });
    expect(books.money('salesTax')).toBe(0);
    expect(books.money('unappliedCredit')).toBe(-1287);
  });

  test('a credit is a sum of values: 3 of 7 reads of 1,000.00 are 428.56', () => {
    const books = signed(terms([{ ...PER_TERM, reads: 7 }], 1000));
    expect(books.position && effectOf(books.position, credit(3))).toMatchObject({ valueCents: 42856, unbilledCents: 42856, memoCents: 0 });
  });

  test('20 and 22 open values are shared anew: 1,200.00 over 22, then over 24 reads', () => {
    const books = signed(MOVES_ON);
    books.book({ kind: 'gameCancelled', gameId: 'c' });
    expect(books.position?.lines[0]?.values).toEqual([...Array(12).fill(5455), ...Array(10).fill(5454)]);
    books.book({ kind: 'gameAdded', gameId: 'm', lines: [{ lineId: 'line', reads: 2 }] });
    expect(books.position?.lines[0]?.values).toEqual(Array(24).fill(5000));
  });

  test('23 reads added at the rate card keep 50.00; for less the open part comes to 47.00 each', () => {
    const [atCard, forLess] = [300, 240].map((price) => {
      const books = signed(FLAT, 10);
      books.book({ kind: 'amended', changes: [{ lineId: 'line', reads: 6, priceCents: dollars(price) }] });
      return books.position?.lines[0]?.values.slice(10);
    });
    expect(atCard).toEqual(Array(20).fill(5000));
    expect(forLess).toEqual(Array(20).fill(4700));
  });

  test('24 after the price is lowered the open reads are 10 × 42.86 and 4 × 42.85', () => {
    const books = billed(FLAT, 10, 1200, 0);
    books.book({ kind: 'priceLowered', byCents: dollars(100), memoId: 'CM' });
    expect(books.position?.lines[0]?.values).toEqual([...Array(10).fill(5000), ...Array(10).fill(4286), ...Array(4).fill(4285)]);
  });

  test('27 the four swapped in are worth 72.50 each', () => {
    const books = signed(FLAT, 10);
    books.book({ kind: 'swapped', fromLineId: 'line', fromReads: 5, toLineId: 'B', toReads: 4, toLine: { ...PER_TERM, lineId: 'B', reads: 4 }, priceCents: dollars(40) });
    expect(books.position?.lines[1]?.values).toEqual(Array(4).fill(7250));
  });

  test('29 two reads carried into the next term take their value along, billed part and all', () => {
    const [old, next] = [billed(FLAT, 20, 1150), signed({ ...FLAT, contractId: 'next' })];
    const out = { kind: 'carriedOut', carryId: 'carry', toContractId: 'next', lineId: 'line', count: 2 } as const;
    const figures = old.position ? carriedFiguresOf(old.position, out) : undefined;
    expect(figures).toEqual({ valuesCents: [5000, 5000], billedCents: 5000, taxCents: 250 });
    const left = old.book(out);
    const came = next.book({ kind: 'carriedIn', carryId: 'carry', fromContractId: 'contract', lineId: 'line', count: 2, valuesCents: [5000, 5000], billedCents: dollars(50), taxCents: dollars(2.5) });
    expect(changesOf(left)).toEqual({ owed: -2, carried: 2, P: 100, TB: -50, BL: -50, CB: 50, UC: -50 });
    expect(changesOf(came)).toEqual({ owed: 2, carried: -2, P: -100, TB: 50, BL: 50, CB: -50, UC: 50 });
    expect(changesOf([...left, ...came])).toEqual({ owed: 0, carried: 0 });
  });

  test('36 what was not earned is ended before anything is written off', () => {
    const unearned = () => invoiceWrittenOff('INV', dollars(1260), 126000, -1);
    expect(refusalOf(unearned)).toBe('write-off-before-ending');
    expect(refusalOf(() => invoiceWrittenOff('INV', dollars(1260), 126000, 0))).toBeNull();
  });

  test('37 a memo undoes no more of a write-off than the open balance cannot take', () => {
    expect(writeOffUndoneByMemo(10500, 0, 126000)).toBe(10500);
    expect(writeOffUndoneByMemo(10500, 4000, 126000)).toBe(6500);
    expect(writeOffUndoneByMemo(10500, 20000, 126000)).toBe(0);
  });

  test('39 reads counted after the start earn as ever, the opening balance stays', () => {
    const books = new Books();
    books.book({ kind: 'openingPosition', terms: FLAT, given: [{ lineId: 'line', count: 10 }], billedCents: dollars(800), paidCents: dollars(200), invoiceId: 'OPEN' });
    expect(changesOf(books.reading())).toEqual({ owed: -1, given: 1, CB: 50, SR: -50 });
    expect(books.money('openingBalance')).toBe(-300);
  });
});

describe('other benefits', () => {
  const BANNER = { kind: 'benefit', lineId: 'banner', name: 'Banner', quantity: 1, rateCents: dollars(300), earns: 'onDelivery' } as const;
  const PAGE = { kind: 'benefit', lineId: 'page', name: 'Web page', quantity: 1, rateCents: dollars(300), earns: 'overDays', startsOn: dayOf('2026-12-01'), endsOn: dayOf('2026-12-30') } as const;

  test('a banner earns on its delivery and gives it back when that is taken back', () => {
    const books = signed(terms([PER_TERM, BANNER], 1500));
    expect(changesOf(books.book({ kind: 'benefitDelivered', deliveryId: 'd', lineId: 'banner', quantity: 1 }))).toEqual({ CB: 300, SR: -300 });
    expect(refusalOf(() => books.book({ kind: 'benefitDelivered', deliveryId: 'e', lineId: 'banner', quantity: 1 }))).toBe('more-than-promised');
    expect(changesOf(books.book({ kind: 'benefitDeliveryTakenBack', deliveryId: 'd' }))).toEqual({ CB: -300, SR: 300 });
  });

  test('a benefit over 30 days earns a share for each day, both ends counted', () => {
    const books = signed(terms([PER_TERM, PAGE], 1500));
    expect(changesOf(books.book({ kind: 'benefitEarnedThrough', lineId: 'page', throughOn: dayOf('2026-12-01') }))).toEqual({ CB: 10, SR: -10 });
    expect(changesOf(books.book({ kind: 'benefitEarnedThrough', lineId: 'page', throughOn: dayOf('2027-02-01') }))).toEqual({ CB: 290, SR: -290 });
  });

  test('a mention at a flat price without a minimum earns with each game played', () => {
    const books = signed(terms([{ ...PER_TERM, counting: 'onOccurrence', reads: 0, gamesPlanned: 12 }], 1200));
    expect(changesOf(books.book({ kind: 'gamePlayed', lineId: 'line', gameId: 'a' }))).toEqual({ CB: 100, SR: -100 });
    expect(changesOf(books.book({ kind: 'occurrenceCounted', occurrenceId: 'o', lineId: 'line' }))).toEqual({ promised: -1, owed: 1 });
    expect(changesOf(books.reading())).toEqual({ owed: -1, given: 1 });
    expect(changesOf(books.book({ kind: 'gamePlayedTakenBack', lineId: 'line', gameId: 'a' }))).toEqual({ CB: -100, SR: 100 });
  });
});
