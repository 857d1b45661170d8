import { describe, expect, test } from 'vitest';
import { directionSeconds, secondsOf, segmentsOf } from '../../server/domain/packet/segment.ts';
import { spokenSeconds, spokenWords } from '../../server/domain/packet/spoken-time.ts';

// "555-555-5555 is ten spoken words": radio copy pages (advertisingbc.ca). The other rows: common practice, no source.
test.each([
  ['Welcome to Alder Fieldhouse.', 4],
  ['555-555-5555', 10],
  ['(303) 555-0142', 10],
  ['at 7:00', 2],
  ['at 7:30', 3],
  ['$19.99', 5],
  ['$20', 2],
  ['number 42', 3],
  ['number 20', 2],
  ['00', 2],
  ['since 1961', 4],
  ['Juniper & Pike', 2],
  ['Off the glass: Copperline!', 4],
  ['the U.S. team', 4],
  ['____', 0],
  ['', 0],
])('“%s” is %i spoken words', (text, words) => {
  expect(spokenWords(text)).toBe(words);
});

// McLellan Marketing (36/75/150 words in 15/30/60 s); 75 words at 183 words a minute, Brysbaert (2019).
test.each([
  [75, 150, 30],
  [150, 150, 60],
  [75, 183, 25],
  [75, 130, 35],
  [75, 140, 33],
])('%i words at %i a minute take %i whole seconds', (words, rate, seconds) => {
  expect(spokenSeconds(Array.from({ length: words }, () => 'word').join(' '), rate)).toBe(seconds);
});

test('60 and 240 words a minute are reading rates, 59 and 241 are none', () => {
  expect(spokenSeconds('word', 60)).toBe(1);
  expect(spokenSeconds('word', 240)).toBe(1);
  expect(() => spokenSeconds('word', 59)).toThrow(RangeError);
  expect(() => spokenSeconds('word', 241)).toThrow(RangeError);
});

describe('directions', () => {
  test.each([['pause 3', 3], ['Pause 20', 20], ['wait for applause', 8], ['wait for the starter to turn', 4], ['Music down.', 0]])('“%s” takes %i seconds', (text, seconds) => {
    expect(directionSeconds(text)).toBe(seconds);
  });

  test('a script is taken apart into what is said and what is done', () => {
    const segments = segmentsOf('[[level voice]]\nGood evening.\n\nWelcome to\nthe Perch.[[pause 3]]Thank you.[[ ]]', 140);
    expect(segments.map((segment) => [segment.kind, segment.text])).toEqual([
      ['direction', 'Level voice'], ['spoken', 'Good evening.'], ['spoken', 'Welcome to\nthe Perch.'], ['direction', 'Pause 3 seconds'], ['spoken', 'Thank you.'],
    ]);
    expect(secondsOf(segments)).toBe(1 + 2 + 3 + 1);
  });

  test('brackets that do not close are read as they stand', () => {
    expect(segmentsOf('Say [[this', 140)).toEqual([expect.objectContaining({ kind: 'spoken', text: 'Say [[this' })]);
  });
});
