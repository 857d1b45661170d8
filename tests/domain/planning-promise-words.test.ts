import { expect, test } from 'vitest';
import { dayOf } from '../../server/domain/day.ts';
import { centsOf } from '../../server/domain/money.ts';
import { mixInWords, orderOfMix, rankedExtras } from '../../server/domain/planning/promise/best-extra.ts';
import { answerInWords, lineInWords, shortBeforeInWords, shortGamesInWords } from '../../server/domain/planning/promise/answer-in-words.ts';
import type { LineAnswer, PromiseAnswer } from '../../server/domain/planning/promise/promise-answer.ts';

const answer = (can: PromiseAnswer['can'], asked: number, atLeast: number, atMost: number, shortBefore = 0): PromiseAnswer => ({ can, asked, atLeast, atMost, shortBefore, lines: [], bottlenecks: [], by: 'places' });

test.each<[PromiseAnswer, string]>([
  [answer('yes', 12, 12, 12), 'Yes: all twelve reads fit, and everything promised before stays whole.'],
  [answer('yes', 1, 1, 1), 'Yes: the read fits, and everything promised before stays whole.'],
  [answer('yes', 2, 2, 2, 3), 'Yes: both reads fit, and nothing promised before loses a read by it.'],
  [answer('no', 12, 9, 9), 'No: nine of the twelve reads fit, and no plan holds more.'],
  [answer('no', 12, 1, 1), 'No: one of the twelve reads fits, and no plan holds more.'],
  [answer('no', 12, 0, 0), 'No: none of the twelve reads fits.'],
  [answer('no', 1, 0, 0), 'No: the read does not fit.'],
  [answer('no', 10_000, 112, 112), 'No: 112 of the 10,000 reads fit, and no plan holds more.'],
  [answer('no', 12, 9, 11), 'No: between nine and eleven of the twelve reads fit, and not all of them.'],
  [answer('between', 12, 9, 12), 'Between nine and twelve of the twelve reads: that all of them fit could not be proven in the time there was.'],
  [answer('no', 0, 0, 0), 'No: there is no game for these reads.'],
])('the answer %#', (one, sentence) => {
  expect(answerInWords(one)).toBe(sentence);
});

test('what is read on occurrence needs no place', () => {
  expect(answerInWords(answer('yes', 0, 0, 0), true)).toBe('Yes: these reads need no place of their own, they are read whenever it happens.');
});

test('what was short before is said by itself', () => {
  expect([0, 1, 3].map((short) => shortBeforeInWords(answer('no', 12, 9, 9, short)))).toEqual([null, 'Already one read short before this, promised to others.', 'Already three reads short before this, promised to others.']);
});

const line = (asked: number, inPlan: number, atLeastAlone: number, atMostAlone: number): LineAnswer => ({ promiseId: 'line', asked, inPlan, atLeastAlone, atMostAlone, shortGameIds: [] });

test.each<[LineAnswer, boolean, string]>([
  [line(12, 12, 12, 12), true, 'All twelve fit.'],
  [line(1, 1, 1, 1), true, 'It fits.'],
  [line(12, 9, 9, 9), true, 'At most nine.'],
  [line(12, 0, 0, 0), true, 'None fits.'],
  [line(12, 0, 0, 0), false, 'None fits, alone or beside the other lines.'],
  [line(12, 7, 9, 9), false, 'At most nine alone, seven beside the other lines.'],
  [line(12, 7, 9, 11), false, 'Between nine and eleven alone, seven beside the other lines.'],
  [line(0, 0, 0, 0), true, 'There is no game for it.'],
])('the most of a line %#', (one, isOnly, sentence) => {
  expect(lineInWords(one, isOnly)).toBe(sentence);
});

test('games without a place are named, and counted from four on', () => {
  const games = ['2027-01-09', '2027-01-15', '2027-01-22', '2027-02-05'].map((day) => ({ label: 'Herons at Kestrels', playedOn: dayOf(day) }));
  expect(shortGamesInWords([])).toBeNull();
  expect(shortGamesInWords(games.slice(0, 2))).toBe('Too few places for it: Herons at Kestrels on Jan 9; Herons at Kestrels on Jan 15.');
  expect(shortGamesInWords(games)).toBe('The four games from Jan 9 to Feb 5 have too few places for it.');
});

const extra = (readKindName: string, priceCents: number | null, most: number) => ({ readKindId: readKindName, readKindName, priceCents: priceCents === null ? null : centsOf(priceCents), most });

test('what earns the most comes first, and what has no price last', () => {
  const ranked = rankedExtras([extra('Bank', null, 40), extra('Ball', 7_500, 2), extra('Concession read', 4_000, 5), extra('Time-out read', 3_000, 5)]);
  expect(ranked.map((one) => [one.readKindName, one.earnsCents])).toEqual([['Concession read', 20_000], ['Ball', 15_000], ['Time-out read', 15_000], ['Bank', 0]].toSorted((one, other) => Number(other[1]) - Number(one[1])));
});

test('the mix takes the dearest read first and leaves out what has no price', () => {
  expect(orderOfMix([extra('Concession read', 4_000, 5), extra('Bank', null, 40), extra('Ball', 7_500, 2), extra('Free', 0, 3)]).map((one) => one.readKindName)).toEqual(['Ball', 'Concession read']);
});

test.each([
  [[['Time-out read', 3_000, 12], ['Concession read', 2_500, 4]], 'Twelve time-out reads and four concession reads: $460.00 at the rate card.'],
  [[['Sponsored game ball', 7_500, 1], ['Concession read', 2_500, 0]], 'One sponsored game ball: $75.00 at the rate card.'],
  [[['Concession read', 2_500, 0]], 'Nothing more fits that has a price on the rate card.'],
  [[], 'Nothing more fits that has a price on the rate card.'],
] as [[string, number, number][], string][])('the mix in words %#', (mix, sentence) => {
  expect(mixInWords(mix.map(([readKindName, priceCents, reads]) => ({ readKindId: readKindName, readKindName, priceCents: centsOf(priceCents), reads })))).toBe(sentence);
});
