import { expect, test } from 'vitest';
import { effectOfChange } from '../../server/domain/sponsorship/change-effect.ts';
import type { Happening } from '../../server/domain/sponsorship/happening.ts';
import { postingWords } from '../../server/domain/sponsorship/posting-words.ts';
import { Books, PER_TERM, dollars, terms } from './ledger-books.ts';

const NAMES = { line: () => 'Concession read', invoice: () => 'TR-2027-0001', payer: 'Juniper & Pike Hardware' };

/** 24 reads for 1,200.00; how many are given, and what is billed. */
function given(count: number, billed = 0): Books {
  const books = new Books();
  books.book({ kind: 'signed', terms: terms([PER_TERM], 1200) });
  books.reading('line', count);
  if (billed > 0) books.invoice('I', billed);
  return books;
}

// The rows are those of LEDGER.md section 2.
test.each<[string, Books, Happening, string[]]>([
  ['2', given(0), { kind: 'invoiced', invoiceId: 'I', number: 'TR-2027-0001', netCents: dollars(600), taxCents: dollars(30), lines: [] }, [
    'The agreed price stays: 600.00 more is billed, 600.00 less is to be billed.',
    '30.00 is added to what is open on invoice TR-2027-0001 and to sales tax payable.',
    '600.00 is added to what is open on invoice TR-2027-0001 and to unearned revenue.',
  ]],
  ['3', given(0, 600), { kind: 'readCounted', readId: 'r', lineId: 'line' }, ['Concession read: 1 fewer owed, 1 more counted as given.', '50.00 moves from unearned revenue to sponsorship revenue.']],
  ['3, not billed yet', given(0), { kind: 'readCounted', readId: 'r', lineId: 'line' }, ['Concession read: 1 fewer owed, 1 more counted as given.', '50.00 is added to unbilled receivable and to sponsorship revenue.']],
  ['3, the last cent of what is billed passed', given(0, 30), { kind: 'readCounted', readId: 'r', lineId: 'line' }, [
    'Concession read: 1 fewer owed, 1 more counted as given.', '30.00 moves from unearned revenue to sponsorship revenue.', '20.00 is added to unbilled receivable and to sponsorship revenue.',
  ]],
  ['4', given(3), { kind: 'invoiced', invoiceId: 'I', number: 'TR-2027-0001', netCents: dollars(150), taxCents: dollars(0), lines: [] }, [
    'The agreed price stays: 150.00 more is billed, 150.00 less is to be billed.', '150.00 moves from unbilled receivable to what is open on invoice TR-2027-0001.',
  ]],
  ['10', given(24), { kind: 'readCounted', readId: 'r', lineId: 'line' }, ['Concession read: 1 more extra.']],
  ['17', given(10, 1200), { kind: 'readsCredited', lineId: 'line', count: 2, memoId: 'M' }, [
    'Concession read: 2 fewer owed, 2 more credited.', 'The agreed price falls by 100.00: 100.00 less is billed.',
    '100.00 moves from unearned revenue to the unapplied credit of Juniper & Pike Hardware.',
  ]],
  ['18', given(10, 1200), { kind: 'allowanceGiven', amountCents: dollars(30), memoId: 'M' }, [
    'The agreed price falls by 30.00: 30.00 less is billed.', '30.00 is added to allowances and to the unapplied credit of Juniper & Pike Hardware.',
  ]],
  ['21', given(10, 1200), { kind: 'readsForfeited', lineId: 'line', count: 4 }, ['Concession read: 4 fewer owed, 4 more released.', '200.00 moves from unearned revenue to unread revenue.']],
  ['23', given(10), { kind: 'amended', changes: [{ lineId: 'line', reads: 6, priceCents: dollars(300) }] }, [
    'Concession read: 6 more promised, 6 more owed.', 'The agreed price rises by 300.00: 300.00 more is to be billed.',
  ]],
  ['29', given(10, 1200), { kind: 'carriedOut', carryId: 'C', toContractId: 'next', lineId: 'line', count: 2 }, [
    'Concession read: 2 fewer owed, 2 carried out.', 'The agreed price falls by 100.00: 100.00 less is billed.',
    '100.00 moves from unearned revenue to the unapplied credit of Juniper & Pike Hardware.',
  ]],
])('row %s of the grammar is told in plain sentences', (_row, books, happening, wanted) => {
  const before = books.position!;
  const { postings } = effectOfChange(before, [happening]);
  const balance = books.money('contractBalance') * 100;
  expect(postingWords(postings, Math.round(balance), NAMES).map((one) => one.sentence)).toEqual(wanted);
});

test('trying a change books nothing and shows what booking it posts', () => {
  const books = given(10, 1200);
  const happening: Happening = { kind: 'ended', memoId: 'M', feeCents: dollars(150) };
  const { postings, lines, before, after } = effectOfChange(books.position!, [happening]);
  expect([lines[0]!.before!.owed, lines[0]!.after!.owed, lines[0]!.openCentsBefore, lines[0]!.openCentsAfter]).toEqual([14, 0, 70_000, 0]);
  expect([before.priceCents, after.priceCents]).toEqual([120_000, 65_000]);
  expect(books.position!.ended).toBe(false);
  expect(books.book(happening)).toEqual(postings);
});
