import { expect, test } from 'vitest';
import { REFUSALS, Refused, refuse, sentenceOfRefusal } from '../../server/domain/refusals.ts';
import type { RefusalCode } from '../../server/domain/refusals.ts';
import { applyHappening } from '../../server/domain/sponsorship/apply-happening.ts';
import type { Happening } from '../../server/domain/sponsorship/happening.ts';
import { Books, PER_TERM, dollars, refusalOf, terms } from './ledger-books.ts';

const FLAT = terms([PER_TERM], 1200);
const PER_GAME = terms([{ ...PER_TERM, counting: 'perGame', reads: 2, games: [{ gameId: 'a', reads: 2 }] }], 100);
const PER_READ = terms([{ ...PER_TERM, pricing: 'perRead' }], 0);

function given(count: number, contract = FLAT, ...more: Happening[]): Books {
  const books = new Books();
  books.book({ kind: 'signed', terms: contract });
  books.reading('line', count);
  for (const happening of more) books.book(happening);
  return books;
}

const invoice = (net: number): Happening => ({ kind: 'invoiced', invoiceId: 'INV', number: 'INV', netCents: dollars(net), taxCents: dollars(0), lines: [] });
const credited = (count: number): Happening => ({ kind: 'readsCredited', lineId: 'line', count, memoId: 'CM' });
const amended = (reads: number, price: number): Happening => ({ kind: 'amended', changes: [{ lineId: 'line', reads, priceCents: dollars(price) }], memoId: 'CM' });
const closing: Happening = { kind: 'closed', receivableCents: dollars(0), unappliedCents: dollars(0) };

/** what stands, what passes, what is refused, and how */
const CASES: [string, Books, Happening | null, Happening, RefusalCode][] = [
  ['a contract is signed once', given(0), null, { kind: 'signed', terms: FLAT }, 'contract-already-signed'],
  ['a read counts once', given(1), { kind: 'readCounted', readId: 'x', lineId: 'line' }, { kind: 'readCounted', readId: 'read-1', lineId: 'line' }, 'read-counted-twice'],
  ['a read is taken back once', given(1, FLAT, { kind: 'readCounted', readId: 'x', lineId: 'line' }, { kind: 'readTakenBack', readId: 'x' }), { kind: 'readTakenBack', readId: 'read-1' }, { kind: 'readTakenBack', readId: 'x' }, 'read-taken-back-already'],
  ['a read belongs to a line of the contract', given(0), { kind: 'readCounted', readId: 'x', lineId: 'line' }, { kind: 'readCounted', readId: 'x', lineId: 'none' }, 'unknown-line'],
  ['a line counted by game needs the game', given(0, PER_GAME), { kind: 'readCounted', readId: 'x', lineId: 'line', gameId: 'a' }, { kind: 'readCounted', readId: 'x', lineId: 'line' }, 'game-needed'],
  ['no more is credited than is owed', given(22), credited(2), credited(3), 'more-than-owed'],
  ['no more is forfeited than is owed', given(22), { kind: 'readsForfeited', lineId: 'line', count: 2 }, { kind: 'readsForfeited', lineId: 'line', count: 3 }, 'more-than-owed'],
  ['a makegood replaces only what is owed', given(22), { kind: 'makegoodAgreed', makegoodId: 'M', lineId: 'line', missed: 2, replacements: 1 }, { kind: 'makegoodAgreed', makegoodId: 'M', lineId: 'line', missed: 3, replacements: 1 }, 'more-than-owed'],
  ['what is billed needs a memo to be credited', given(0, FLAT, invoice(1150)), { kind: 'readsCredited', lineId: 'line', count: 1 }, { kind: 'readsCredited', lineId: 'line', count: 2 }, 'memo-needed'],
  ['no amendment goes below what is given', given(10), amended(-14, -700), amended(-15, -700), 'fewer-than-settled'],
  ['no amendment takes more than the open value', given(10), amended(0, -700), amended(0, -700.01), 'more-than-open-value'],
  ['no price is left without a read to earn it', given(10), amended(-14, -700), amended(-14, -699), 'value-without-reads'],
  ['the price goes down only by what is open', given(10), { kind: 'priceLowered', byCents: dollars(700) }, { kind: 'priceLowered', byCents: dollars(700.01) }, 'more-than-open-value'],
  ['no more is billed than agreed', given(0), invoice(1200), invoice(1200.01), 'more-than-to-bill'],
  ['reads priced each are billed only once given', given(1, PER_READ), invoice(50), invoice(50.01), 'more-than-to-bill'],
  ['no more is allowed for than was earned', given(2), { kind: 'allowanceGiven', amountCents: dollars(100) }, { kind: 'allowanceGiven', amountCents: dollars(100.01) }, 'more-than-earned'],
  ['an invoice with a credit is not voided', given(0, FLAT, invoice(1200), credited(1)), null, { kind: 'invoiceVoided', invoiceId: 'INV', number: 'INV' }, 'void-after-credit'],
  ['an invoice with reads carried over is not voided', given(0, FLAT, invoice(1200), { kind: 'carriedOut', carryId: 'c', toContractId: 'next', lineId: 'line', count: 1 }), null, { kind: 'invoiceVoided', invoiceId: 'INV', number: 'INV' }, 'void-after-carry-over'],
  ['an invoice is voided once', given(0, FLAT, invoice(1200), { kind: 'invoiceVoided', invoiceId: 'INV', number: 'INV' }), null, { kind: 'invoiceVoided', invoiceId: 'INV', number: 'INV' }, 'invoice-already-void'],
  ['a contract closes only when nothing is owed', given(23, FLAT, invoice(1200)), { kind: 'readCounted', readId: 'x', lineId: 'line' }, closing, 'close-with-reads-owed'],
  ['a contract closes only when all is billed', given(24, FLAT, invoice(1199)), null, closing, 'close-with-something-to-bill'],
  ['a contract closes only when all is paid', given(24, FLAT, invoice(1200)), closing, { ...closing, receivableCents: dollars(0.01) }, 'close-with-open-balance'],
  ['a closed contract takes nothing more', given(24, FLAT, invoice(1200), closing), { kind: 'reopened' }, { kind: 'readCounted', readId: 'x', lineId: 'line' }, 'contract-closed'],
  ['a minimum has to be agreed', given(0), null, { kind: 'minimumClaimed' }, 'no-minimum-agreed'],
  ['a contract ends once', given(0, FLAT, { kind: 'ended' }), null, { kind: 'ended' }, 'contract-already-ended'],
  ['only a contract in kind takes goods', given(0), null, { kind: 'goodsReceived', goodsId: 'g', amountCents: dollars(1), what: 'Programs' }, 'not-in-kind'],
];

test.each(CASES)('%s', (_name, books, passes, refused, code) => {
  if (passes) expect(refusalOf(() => applyHappening(books.position, passes))).toBeNull();
  expect(refusalOf(() => applyHappening(books.position, refused))).toBe(code);
});

test('a contract without lines, or with a price and no rates, is not signed', () => {
  expect(refusalOf(() => applyHappening(null, { kind: 'signed', terms: terms([], 100) }))).toBe('contract-without-lines');
  const free = { ...PER_TERM, rateCents: dollars(0) };
  expect(refusalOf(() => applyHappening(null, { kind: 'signed', terms: terms([free], 100) }))).toBe('price-without-rates');
  expect(refusalOf(() => applyHappening(null, { kind: 'signed', terms: terms([free], 0) }))).toBeNull();
  expect(refusalOf(() => applyHappening(null, { kind: 'reopened' }))).toBe('contract-not-signed');
});

test('a refused happening leaves the contract as it was', () => {
  const books = given(10, FLAT, invoice(1150));
  const before = JSON.stringify(books.position);
  expect(refusalOf(() => books.book(credited(15)))).toBe('more-than-owed');
  expect(JSON.stringify(books.position)).toBe(before);
});

test('every refusal has a sentence that begins with a capital and ends with a stop', () => {
  for (const [code, { sentence }] of Object.entries(REFUSALS)) {
    expect(code).toMatch(/^[a-z][a-z0-9-]+$/);
    expect(sentence, code).toMatch(/^[A-Z{"“].*[.?!}]$/);
  }
});

test('the sentence of a refusal names its figures', () => {
  expect(sentenceOfRefusal('more-than-owed', { owed: 2 })).toBe('Only 2 are still owed on this line.');
  expect(() => refuse('more-than-owed', { owed: 2 })).toThrow(Refused);
  expect(new Refused('more-than-balance', { balance: '12.00' }).message).toBe('Only 12.00 is open on this invoice.');
});
