import { describe, expect, test } from 'vitest';
import type { BillingPlan } from '../../server/domain/billing/billing-plan.ts';
import { dueToBill, monthsOverOn } from '../../server/domain/billing/due-to-bill.ts';
import type { GameToBill } from '../../server/domain/billing/game-lines.ts';
import { dayOf } from '../../server/domain/day.ts';
import type { ContractTerms } from '../../server/domain/sponsorship/contract-terms.ts';
import { Books, PER_TERM, dollars, terms } from './ledger-books.ts';

const day = (text: string) => dayOf(text);

function given(count: number, contract: ContractTerms = terms([PER_TERM], 1200)): Books {
  const books = new Books();
  books.book({ kind: 'signed', terms: contract });
  books.reading('line', count);
  return books;
}

describe('per game played', () => {
  const games = (...played: boolean[]): GameToBill[] => played.map((isPlayed, place) => ({ gameId: `g${place + 1}`, playedOn: day(`2026-12-0${place + 1}`), isPlayed, name: `Game ${place + 1}` }));
  const byGame = (books: Books, facts: GameToBill[], through = '2026-12-31') => dueToBill({ kind: 'perGame' }, books.position!, day(through), { games: facts });
  const bill = (books: Books, facts: GameToBill[], through?: string) => {
    const { lines, netCents } = byGame(books, facts, through);
    books.book({ kind: 'invoiced', invoiceId: `G${netCents}`, number: `G${netCents}`, netCents, taxCents: dollars(0), lines });
    return lines.map((line) => [line.gameId, line.amountCents]);
  };

  test('1,000.00 over seven games is 142.86 five times, then 142.85 twice, in whatever pieces it is billed', () => {
    const books = given(0, terms([PER_TERM], 1000));
    expect(bill(books, games(true, true, false, false, false, false, false))).toEqual([['g1', 14286], ['g2', 14286]]);
    expect(byGame(books, games(true, true, false, false, false, false, false)).why).toBe('No game was played through 2026-12-31 that is not billed.');
    expect(bill(books, games(true, true, true, true, true, true, true))).toEqual([['g3', 14286], ['g4', 14286], ['g5', 14286], ['g6', 14285], ['g7', 14285]]);
  });

  test('a game is due on its day and not the day before, and only once it was played', () => {
    const books = given(0, terms([PER_TERM], 700));
    expect(byGame(books, games(true, true), '2026-12-01').netCents).toBe(35000);
    expect(byGame(books, games(true, true), '2026-11-30').netCents).toBe(0);
    expect(byGame(books, games(false, true)).lines.map((line) => line.gameId)).toEqual(['g2']);
  });

  test('a cancelled game leaves its share to the open ones, an added one takes its share from them', () => {
    const books = given(0, terms([PER_TERM], 900));
    bill(books, games(true, false, false), '2026-12-01');
    expect(byGame(books, games(true, true)).lines.map((line) => line.amountCents)).toEqual([60000]);
    expect(byGame(books, games(true, true, true, true)).lines.map((line) => line.amountCents)).toEqual([20000, 20000, 20000]);
  });

  test('nothing is due without a game, and what is added after the last one is due at once', () => {
    const books = given(0, terms([PER_TERM], 900));
    expect(byGame(books, [])).toMatchObject({ netCents: 0, why: 'The calendar has no game that this contract covers.' });
    bill(books, games(true));
    books.book({ kind: 'amended', changes: [{ lineId: 'line', reads: 1, priceCents: dollars(50) }] });
    expect(byGame(books, games(true)).lines).toEqual([{ text: 'Added to the agreement since the last game', amountCents: 5000 }]);
  });
});

describe('per read, monthly in arrears', () => {
  const MONTHLY: BillingPlan = { kind: 'perReadInArrears', monthly: true };
  const days = new Map([['read-1', day('2026-11-30')], ['read-2', day('2026-12-01')], ['read-3', day('2026-12-31')]]);
  const monthly = (books: Books, through: string) => dueToBill(MONTHLY, books.position!, day(through), { days });

  test.each([
    ['2026-11-29', 0],
    ['2026-11-30', 5000],
    ['2026-12-30', 5000],
    ['2026-12-31', 15000],
  ])('through %s the reads of the months that are over come to %i cents', (through, netCents) => {
    expect(monthly(given(3), through).netCents).toBe(netCents);
  });

  test('a read that is billed stays billed when the month before is looked at again', () => {
    const books = given(3);
    const { lines, netCents } = monthly(books, '2026-12-31');
    books.book({ kind: 'invoiced', invoiceId: 'M', number: 'M', netCents, taxCents: dollars(0), lines });
    expect(monthly(books, '2026-11-30').netCents).toBe(0);
  });

  test('a cap holds over the months, and a contract that ended is billed whole', () => {
    const capped = given(3, terms([{ ...PER_TERM, pricing: 'perRead', priceEachCents: dollars(25) }], 0, { billAtMostCents: dollars(40) }));
    expect([monthly(capped, '2026-11-30').netCents, monthly(capped, '2026-12-31').netCents]).toEqual([2500, 4000]);
    const ended = given(3);
    ended.book({ kind: 'ended' });
    expect(monthly(ended, '2026-12-15').netCents).toBe(15000);
  });

  test('a closed contract has nothing due, whatever extra read the running month has', () => {
    const books = given(3, terms([{ ...PER_TERM, reads: 2 }], 100));
    const { lines, netCents } = monthly(books, '2026-12-31');
    books.book({ kind: 'invoiced', invoiceId: 'M', number: 'M', netCents, taxCents: dollars(0), lines });
    books.book({ kind: 'closed', receivableCents: dollars(0), unappliedCents: dollars(0) });
    expect(monthly(books, '2026-12-15')).toMatchObject({ netCents: 0, lines: [] });
  });

  test.each([['2026-11-30', '2026-11-30'], ['2026-12-30', '2026-11-30'], ['2027-01-01', '2026-12-31'], ['2028-02-28', '2028-01-31'], ['2028-02-29', '2028-02-29']])('on %s the last month that is over ended on %s', (on, ended) => {
    expect(monthsOverOn(day(on))).toBe(ended);
  });
});
