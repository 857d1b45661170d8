import { describe, expect, test } from 'vitest';
import { amountsOf } from '../../server/domain/sponsorship/contract-amounts.ts';
import { effectOf } from '../../server/domain/sponsorship/apply-happening.ts';
import { standingOf } from '../../server/domain/sponsorship/standing.ts';
import { namesOf, sentenceFor } from '../../server/domain/sponsorship/sentence.ts';
import type { ContractTerms } from '../../server/domain/sponsorship/contract-terms.ts';
import type { Position } from '../../server/domain/sponsorship/position.ts';
import { Books, PER_TERM, dollars, terms } from './ledger-books.ts';

function given(count: number, contract: ContractTerms): Books {
  const books = new Books();
  books.book({ kind: 'signed', terms: contract });
  books.reading('line', count);
  return books;
}

const state = (books: Books): Position => {
  if (!books.position) throw new Error('not signed');
  return books.position;
};

describe('published accounting examples', () => {
  test('a price of 100 over stand-alone prices of 50, 25 and 75 is shared as 33.33, 16.67 and 50.00', () => {
    // ASC 606 Example 33 (606-10-55-256 to 258), figures from memory
    const line = (lineId: string, rate: number) => ({ ...PER_TERM, lineId, reads: 1, rateCents: dollars(rate) });
    const books = given(0, terms([line('a', 50), line('b', 25), line('c', 75)], 100));
    expect(state(books).lines.map((one) => one.values)).toEqual([[3333], [1667], [5000]]);
  });

  test('an amendment at another price blends with what is still to come: 60 at 100 and 30 at 80 are 93.33 each', () => {
    // ASC 606 Example 5, case B (606-10-55-114 to 116), figures from memory; in cents 30 are 93.34 and 60 are 93.33
    const books = given(60, terms([{ ...PER_TERM, reads: 120, rateCents: dollars(100) }], 12000));
    books.book({ kind: 'amended', changes: [{ lineId: 'line', reads: 30, priceCents: dollars(2400) }] });
    const open = state(books).lines[0]?.values.slice(60) ?? [];
    expect(open).toHaveLength(90);
    expect([Math.min(...open), Math.max(...open)]).toEqual([9333, 9334]);
    expect(amountsOf(state(books)).openCents).toBe(840000);
  });

  test('the same at the stand-alone price leaves the first 120 as they were', () => {
    // ASC 606 Example 5, case A (606-10-55-111 to 113), from memory: a separate contract at 95
    const books = given(60, terms([{ ...PER_TERM, reads: 120, rateCents: dollars(95) }], 12000));
    books.book({ kind: 'amended', changes: [{ lineId: 'line', reads: 30, priceCents: dollars(2850) }] });
    expect(state(books).lines[0]?.values).toEqual([...Array(120).fill(10000), ...Array(30).fill(9500)]);
  });

  test('a volume discount reached in the second quarter brings 93,600 after 36,000', () => {
    // the IFRS 15 example of ifrsbuddy.com: 480 each, 432 from a threshold on; what was given before is allowed for
    const books = given(75, terms([{ ...PER_TERM, reads: 300, rateCents: dollars(480) }], 144000));
    books.invoice('Q1', 36000);
    expect(-books.money('sponsorshipRevenue')).toBe(36000);
    books.book({ kind: 'allowanceGiven', amountCents: dollars(75 * 48), memoId: 'CM' });
    books.book({ kind: 'priceLowered', byCents: dollars(225 * 48) });
    books.reading('line', 225);
    expect(-books.money('sponsorshipRevenue') - books.money('allowances') - 36000).toBe(93600);
  });

  test('a volume discount from 100 to 90 after 75 given makes the next 500 come to 44,250', () => {
    // ASC 606 Example 24 (606-10-55-216 to 220), figures from memory
    const books = given(75, terms([{ ...PER_TERM, reads: 575, rateCents: dollars(100) }], 57500));
    expect(-books.money('sponsorshipRevenue')).toBe(7500);
    books.book({ kind: 'priceLowered', byCents: dollars(5000) });
    books.book({ kind: 'allowanceGiven', amountCents: dollars(750) });
    books.reading('line', 500);
    expect(-books.money('sponsorshipRevenue') - books.money('allowances') - 7500).toBe(44250);
  });

  test('a service of 12 months has earned a quarter after 90 days of 360', () => {
    // progress by time as in a published revenue guide, 25 % after 90 days, here on a year of 360 days
    const line = { kind: 'benefit', lineId: 'sign', name: 'Sign', quantity: 1, rateCents: dollars(360), earns: 'overDays', startsOn: '2026-07-01', endsOn: '2027-06-25' } as never;
    const books = given(0, terms([line], 360));
    books.book({ kind: 'benefitEarnedThrough', lineId: 'sign', throughOn: '2026-09-28' as never });
    expect(-books.money('sponsorshipRevenue')).toBe(90);
  });
});

describe('fulfilment', () => {
  const FORTY = terms([{ ...PER_TERM, reads: 40, rateCents: dollars(25) }], 1000);

  function thirtySeven(): Books {
    const books = given(33, FORTY);
    books.book({ kind: 'makegoodAgreed', makegoodId: 'M', lineId: 'line', missed: 4, replacements: 4 });
    for (let one = 1; one <= 4; one += 1) books.book({ kind: 'makegoodGiven', makegoodId: 'M', readId: `m${one}` });
    return books;
  }

  test('of 40 reads for 1,000.00, 33 given and 4 made good leave 3 short, a credit of 75.00 and 925.00 earned', () => {
    const books = thirtySeven();
    expect(standingOf(state(books), 'line', { gamesInAll: 10, gamesPlayed: 10, loggedNotSignedOff: 0 })).toMatchObject({ given: 33, madeGood: 4, owed: 3, behind: 3 });
    expect(effectOf(state(books), { kind: 'readsCredited', lineId: 'line', count: 3 }).valueCents).toBe(7500);
    expect(amountsOf(state(books)).revenueCents).toBe(92500);
  });

  test('43 given are 3 extra and the price stays 1,000.00', () => {
    const books = given(43, FORTY);
    expect(standingOf(state(books), 'line', { gamesInAll: 10, gamesPlayed: 10, loggedNotSignedOff: 0 })).toMatchObject({ given: 40, extra: 3, behind: 0 });
    expect(amountsOf(state(books))).toMatchObject({ priceCents: 100000, revenueCents: 100000 });
  });
});

describe('pace', () => {
  const books = given(7, terms([PER_TERM], 1200));

  test.each([
    [0, 0, 0, 0],
    [3, 0, 6, 0],
    [4, 0, 8, 1],
    [4, 1, 8, 0],
    [12, 0, 24, 17],
  ])('after %i of 12 games with %i logged, %i of 24 are expected and 7 given are %i behind', (gamesPlayed, loggedNotSignedOff, expectedByNow, behind) => {
    expect(standingOf(state(books), 'line', { gamesInAll: 12, gamesPlayed, loggedNotSignedOff })).toMatchObject({ expectedByNow, behind });
  });

  test('a replacement that is logged and not signed off catches up as much as its makegood says', () => {
    const replaced = given(7, terms([PER_TERM], 1200));
    replaced.book({ kind: 'makegoodAgreed', makegoodId: 'm', lineId: 'line', missed: 1, replacements: 2 });
    const behind = (logged: number) => standingOf(state(replaced), 'line', { gamesInAll: 12, gamesPlayed: 5, loggedNotSignedOff: logged, loggedMakegoods: new Map([['m', logged]]) });
    // Of 10 expected 7 are given; with the second of two replacements the missed read is settled, and a third counts like any other.
    expect([0, 1, 2, 3].map((logged) => behind(logged).behind)).toEqual([3, 3, 2, 1]);
    expect(behind(2).loggedNotSignedOff).toBe(2);
  });

  test('on occurrence the shots that fell are what is expected', () => {
    const mentions = given(0, terms([{ ...PER_TERM, counting: 'onOccurrence', reads: 0, readsAtLeast: 10, readsAtMost: 30 }], 500));
    for (let one = 1; one <= 3; one += 1) mentions.book({ kind: 'occurrenceCounted', occurrenceId: `o${one}`, lineId: 'line' });
    mentions.reading('line', 2);
    expect(standingOf(state(mentions), 'line', { gamesInAll: 12, gamesPlayed: 4, loggedNotSignedOff: 0 })).toMatchObject({ promised: 10, owed: 8, expectedByNow: 3, behind: 1 });
  });
});

test('a statement says what happened in plain words', () => {
  const books = given(0, terms([PER_TERM], 1200));
  const names = { ...namesOf(state(books)), game: (gameId: string) => (gameId === 'g' ? 'Herons at Kestrels' : undefined) };
  expect(sentenceFor({ kind: 'readCounted', readId: 'r', lineId: 'line', gameId: 'g' }, names)).toBe('A read was given: Concession read, Herons at Kestrels.');
  expect(sentenceFor({ kind: 'readsCredited', lineId: 'line', count: 2 }, names)).toBe('2 of Concession read were credited.');
  expect(sentenceFor({ kind: 'invoiced', invoiceId: 'i', number: 'INV-2027-0001', netCents: dollars(350), taxCents: dollars(17.5), lines: [] })).toBe('Invoice INV-2027-0001 was issued: $350.00 and $17.50 tax.');
});
