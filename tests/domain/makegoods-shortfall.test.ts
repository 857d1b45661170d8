import { describe, expect, test } from 'vitest';
import { missedReadsOf, openShortfall } from '../../server/domain/makegoods/missed-reads.ts';
import type { MissedClaim, MissedRead } from '../../server/domain/makegoods/missed-reads.ts';
import { carriedValueOf, creditedValueOf, fewestInstead, repairOptionsOf } from '../../server/domain/makegoods/repair-options.ts';
import { freePlacesIn } from '../../server/domain/makegoods/room-in-game.ts';
import type { ReadThere, ReadWanted, WindowLeft } from '../../server/domain/makegoods/room-in-game.ts';
import { shortfallOfLine } from '../../server/domain/makegoods/shortfall-of-line.ts';
import type { RoomLeft } from '../../server/domain/makegoods/shortfall-of-line.ts';
import type { ReadLine } from '../../server/domain/sponsorship/contract-terms.ts';
import type { LinePosition, Position } from '../../server/domain/sponsorship/position.ts';
import { Books, PER_TERM, dollars, terms } from './ledger-books.ts';

const positionOf = (books: Books): Position => books.position!;
const lineOf = (books: Books): LinePosition => positionOf(books).lines[0]!;

function signed(line: Partial<ReadLine>, priceDollars: number): Books {
  const books = new Books();
  books.book({ kind: 'signed', terms: terms([{ ...PER_TERM, ...line }], priceDollars) });
  return books;
}

const room = (gameId: string, places: number, nightId = `night-${gameId}`): RoomLeft => ({ gameId, nightId, places });

// Common practice, no source.
describe('reads that can no longer be given as promised', () => {
  test.each([
    ['room for all that is owed', 4, [room('a', 2), room('b', 2)], 0],
    ['one place fewer', 4, [room('a', 2), room('b', 1)], 1],
    ['windows that are not ours', 4, [room('a', 0), room('b', 0)], 4],
    ['the season over', 4, [], 4],
    ['everything given', 0, [], 0],
  ])('over the term, with %s', (_what, owed, left, short) => {
    const books = signed({ reads: 10 }, 500);
    books.reading('line', 10 - owed);
    expect(shortfallOfLine(lineOf(books), left)).toEqual([{ slotId: null, owed, awaiting: 0, shortfall: short }]);
  });

  test('a replacement that is agreed waits for its night and is no shortfall', () => {
    const books = signed({ reads: 4 }, 200);
    books.book({ kind: 'makegoodAgreed', makegoodId: 'm', lineId: 'line', missed: 3, replacements: 2 });
    expect(shortfallOfLine(lineOf(books), [])).toEqual([{ slotId: null, owed: 4, awaiting: 3, shortfall: 1 }]);
  });

  test('counted by the game, another game carries nothing of it', () => {
    const books = signed({ counting: 'perGame', reads: 2, games: [{ gameId: 'a', reads: 2 }, { gameId: 'b', reads: 2 }] }, 400);
    books.reading('line', 1, 'a');
    const short = shortfallOfLine(lineOf(books), [room('b', 8)]);
    expect(short.map(({ slotId, shortfall }) => [slotId, shortfall])).toEqual([['a', 1], ['b', 0]]);
  });

  test('counted by the night, any game of that night carries it', () => {
    const books = signed({ counting: 'perNight', reads: 3, games: [{ gameId: 'night', reads: 3 }] }, 300);
    expect(shortfallOfLine(lineOf(books), [room('a', 1, 'night'), room('b', 1, 'night'), room('c', 5, 'other')])[0]).toMatchObject({ owed: 3, shortfall: 1 });
  });

  test.each([
    ['nothing fell and a game is left: the guaranteed may still be read', 0, 0, [room('a', 0)], undefined, 0],
    ['nothing fell and no game is left', 0, 0, [], undefined, 4],
    ['six fell, five were read, a game is left: the sixth is missed for good', 6, 5, [room('a', 0)], undefined, 1],
    ['six fell, six were read', 6, 6, [room('a', 0)], undefined, 0],
    ['three fell, one was read, a game is left', 3, 1, [room('a', 0)], undefined, 2],
    ['six fell, five were read, at most six: a later shot may still fill it', 6, 5, [room('a', 0)], 6, 0],
    ['six fell, five were read, at most six, and no game is left', 6, 5, [], 6, 1],
  ])('on occurrence, at least four: %s', (_what, fell, read, left, most, short) => {
    const books = signed({ counting: 'onOccurrence', readsAtLeast: 4, ...(most === undefined ? {} : { readsAtMost: most }) }, 200);
    for (let shot = 0; shot < fell; shot += 1) books.book({ kind: 'occurrenceCounted', occurrenceId: `shot-${shot}/line`, lineId: 'line' });
    books.reading('line', read);
    expect(shortfallOfLine(lineOf(books), left)[0]!.shortfall).toBe(short);
  });
});

describe('free places for a read in a game', () => {
  const windows: WindowLeft[] = [
    { key: 'pregame', kind: 'pregame', places: 2, groupPlaces: {} },
    { key: 'timeOut1', kind: 'timeOut', places: 1, groupPlaces: {} },
    { key: 'timeOut2', kind: 'timeOut', places: 1, groupPlaces: { concession: 0 } },
  ];
  const wanted: ReadWanted = { commitmentId: 'c', sponsorId: 'juniper', readKindId: 'kind', windows: ['timeOut', 'pregame'], placeGroup: null, sponsorsPerGame: 2, mostPerGame: null };
  const read = (windowKey: string, more: Partial<ReadThere> = {}): ReadThere => ({ windowKey, placeGroup: null, readKindId: 'other', sponsorId: 'okafor', commitmentId: 'x', isMakegood: false, ...more });
  test.each([
    ['an empty game', [], {}, 4],
    ['a place that is taken', [read('pregame')], {}, 3],
    ['the windows of the kind alone', [], { windows: ['pregame'] }, 2],
    ['a window by its key', [], { windows: ['timeOut'] }, 2],
    ['a group without places in one window', [], { placeGroup: 'concession' }, 3],
    ['the most of a game', [read('pregame', { commitmentId: 'c', sponsorId: 'juniper' })], { mostPerGame: 2 }, 1],
    ['the most of a game, reached', [read('pregame', { commitmentId: 'c', sponsorId: 'juniper' })], { mostPerGame: 1 }, 0],
    ['a second sponsor of the kind', [read('pregame', { readKindId: 'kind' })], {}, 3],
    ['two other sponsors of the kind', [read('pregame', { readKindId: 'kind' }), read('pregame', { readKindId: 'kind', sponsorId: 'mirabel' })], {}, 0],
  ])('%s', (_what, there, more, free) => {
    expect(freePlacesIn(windows, there as ReadThere[], { ...wanted, ...(more as Partial<ReadWanted>) })).toBe(free);
  });
});

describe('what a remedy costs the school', () => {
  // LEDGER.md, section 1: a credit is a sum of the values from the end; 3 of 7 reads of 1,000.00 are 428.56.
  test('three of seven reads of 1,000.00 are credited at 428.56, not at three times an average', () => {
    const books = signed({ reads: 7, rateCents: dollars(150) }, 1000);
    expect(lineOf(books).values).toEqual([14286, 14286, 14286, 14286, 14286, 14285, 14285]);
    expect(creditedValueOf(positionOf(books), 'line', 3)).toBe(42856);
    expect(carriedValueOf(positionOf(books), 'line', 3)).toBe(42856);
    expect(creditedValueOf(positionOf(books), 'line', 7)).toBe(100000);
  });

  test('what is credited is what the books then lower the price by', () => {
    const books = signed({ reads: 7, rateCents: dollars(150) }, 1000);
    books.reading('line', 4);
    const value = creditedValueOf(positionOf(books), 'line', 3);
    const before = books.postings.filter((posting) => posting.journal === 'agreed').length;
    books.book({ kind: 'readsCredited', lineId: 'line', count: 3 });
    expect(books.postings.filter((posting) => posting.journal === 'agreed').slice(before).reduce((sum, posting) => sum + posting.amount, 0)).toBe(value);
  });

  test('after a discount no more is put in writing than the books give back', () => {
    const books = signed({ reads: 4 }, 200);
    books.invoice('INV', 200);
    books.book({ kind: 'discountTaken', invoiceId: 'INV', amountCents: dollars(4), taxCents: dollars(0) });
    expect([3, 4].map((reads) => creditedValueOf(positionOf(books), 'line', reads))).toEqual([dollars(150), dollars(196)]);
    books.book({ kind: 'readsCredited', lineId: 'line', count: 4, memoId: 'CM' });
    expect(positionOf(books).memos[0]!.netCents).toBe(dollars(196));
  });

  test('a read priced each that was never given costs nothing to credit, save what it lowers the least amount by', () => {
    const each: Partial<ReadLine> = { pricing: 'perRead', priceEachCents: dollars(25), reads: 40 };
    const plain = new Books();
    plain.book({ kind: 'signed', terms: terms([{ ...PER_TERM, ...each }], 0) });
    expect(creditedValueOf(positionOf(plain), 'line', 3)).toBe(0);
    const least = new Books();
    least.book({ kind: 'signed', terms: terms([{ ...PER_TERM, ...each }], 0, { billAtLeastCents: dollars(400) }) });
    expect(creditedValueOf(positionOf(least), 'line', 3)).toBe(7500);
  });

  test.each([
    [4, 2500, 5000, 2],
    [3, 2500, 5000, 2],
    [5, 2500, 5000, 3],
    [1, 4000, 7500, 1],
    [2, 7500, 4000, 4],
    [2, 4000, 4000, 2],
    [1, 0, 4000, 1],
    [3, 2500, 0, null],
    [1000, 9000, 8999, null],
  ])('for %d missed at %d cents, of a kind at %d cents %s are the fewest of no less value', (missed, price, other, fewest) => {
    expect(fewestInstead(missed, price, other)).toBe(fewest);
    if (fewest === null) return;
    expect(fewest * other).toBeGreaterThanOrEqual(missed * price);
    if (fewest > 1) expect((fewest - 1) * other).toBeLessThan(missed * price);
  });

  const kind = { readKindId: 'concession', readKindName: 'Concession read', priceCents: 2500, freePlaces: 4 };
  const others = [{ readKindId: 'ball', readKindName: 'Sponsored game ball', priceCents: 7500, freePlaces: 1 }];
  const repair = { missed: 3, priceCents: 2500, kind, others, creditCents: 7500, carriedCents: 7500, isInKind: false };
  const told = (more: Partial<typeof repair>) => repairOptionsOf({ ...repair, ...more }).map(({ remedy, replacements, costCents, fits }) => [remedy, replacements, costCents, fits]);

  test('what can be done comes first, the cheapest first', () => {
    expect(told({})).toEqual([['moreReads', 3, 0, true], ['otherKind', 1, 7500, true], ['carryOver', null, 7500, true], ['credit', null, 7500, true]]);
    expect(told({ kind: { ...kind, freePlaces: 2 }, creditCents: 7000 })).toEqual([['credit', null, 7000, true], ['otherKind', 1, 7500, true], ['carryOver', null, 7500, true], ['moreReads', 3, 0, false]]);
  });

  test('who pays in goods is made good before money is given back', () => {
    expect(told({ isInKind: true }).at(-1)).toEqual(['credit', null, 7500, false]);
  });

  test('a mention that waits for a shot cannot be planned as one more', () => {
    expect(repairOptionsOf({ ...repair, kind: null }).map((one) => one.remedy)).toEqual(['otherKind', 'carryOver', 'credit']);
  });

  test('for nothing missed there is nothing to choose', () => {
    expect(told({ missed: 0 })).toEqual([]);
  });
});

describe('the missed reads of a line', () => {
  const read = (placementId: string | null, missedOn: string, more: Partial<MissedRead> = {}): MissedRead => (
    { slotId: null, nightId: `n-${missedOn}`, gameId: `g-${missedOn}`, windowKey: 'halftime', placementId, missedOn: missedOn as never, because: 'windowOver', why: 'no time', ...more }
  );
  const slot = (owed: number, shortfall: number, awaiting = 0) => ({ slotId: null, owed, awaiting, shortfall });
  const ending = (count: number) => Array.from({ length: count }, () => read(null, '2027-03-12', { nightId: null, gameId: null, because: 'seasonEnding' }));
  const logged = [read('p1', '2026-12-04'), read('p2', '2026-12-11'), read('p3', '2026-12-18')];
  const openOf = (missed: readonly { isOpen: boolean; placementId: string | null }[]) => missed.filter((one) => one.isOpen).map((one) => one.placementId);

  test('a read given later stands for the first that was missed, so the last ones are still owed', () => {
    const missed = missedReadsOf({ slots: [slot(2, 2)], logged, claims: [], unlogged: (_, count) => ending(count) });
    expect(missed.map((one) => [one.placementId, one.isOpen])).toEqual([['p1', false], ['p2', true], ['p3', true]]);
  });

  test('what a proposal speaks for is not proposed again', () => {
    const claims: MissedClaim[] = [{ proposalId: 'one', slotId: null, nightId: 'n-2026-12-18', gameId: 'g-2026-12-18', placementId: 'p3', isPending: true }];
    const missed = missedReadsOf({ slots: [slot(3, 3)], logged, claims, unlogged: (_, count) => ending(count) });
    expect(missed.map((one) => [one.placementId, one.proposalId])).toEqual([['p1', null], ['p2', null], ['p3', 'one']]);
    expect(openOf(missed)).toEqual(['p1', 'p2']);
    expect(openShortfall([slot(3, 3)], claims)).toBe(2);
  });

  test('what the log has nothing of is missed with the end of the season', () => {
    const missed = missedReadsOf({ slots: [slot(5, 5)], logged, claims: [], unlogged: (_, count) => ending(count) });
    expect(missed.map((one) => one.because)).toEqual(['windowOver', 'windowOver', 'windowOver', 'seasonEnding', 'seasonEnding']);
    expect(openOf(missed)).toHaveLength(5);
  });

  test('never more is open than is owed', () => {
    const missed = missedReadsOf({ slots: [slot(1, 0)], logged, claims: [], unlogged: (_, count) => ending(count) });
    expect(openOf(missed)).toEqual(['p3']);
    expect(openOf(missedReadsOf({ slots: [slot(0, 0)], logged, claims: [], unlogged: () => [] }))).toEqual([]);
  });
});
