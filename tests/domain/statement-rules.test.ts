import { describe, expect, test } from 'vitest';
import { audienceOf, audienceWords } from '../../server/domain/reports/audience.ts';
import { clockWords, outcomeWords } from '../../server/domain/reports/outcome-words.ts';
import { paceOfLines } from '../../server/domain/reports/pace-of-lines.ts';
import { aNight, aRead, day } from '../support/statement-content.ts';

// Common practice, no published source: a read heard counts once for everybody who came that night.
describe('audience contacts', () => {
  test.each([
    ['given', 400], ['extra', 400], ['makegood', 400], ['notRead', 0], ['cutShort', 0], ['takenBack', 0],
  ] as const)('of a read that was %s before 400 people are %i', (outcome, contacts) => {
    expect(audienceOf([aNight(day('2026-12-01'), [aRead({ outcome })])]).contacts).toBe(contacts);
  });

  test('are added up over the reads of each night, and nights without attendance are counted apart', () => {
    const nights = [
      aNight(day('2026-12-01'), [aRead(), aRead()], { attendance: 412 }),
      aNight(day('2026-12-08'), [aRead()], { attendance: null }),
      aNight(day('2026-12-15'), [aRead({ outcome: 'notRead' })], { attendance: null }),
      aNight(day('2026-12-18'), [aRead()], { attendance: 0 }),
    ];
    expect(audienceOf(nights)).toEqual({ contacts: 824, nights: 2, reads: 3, nightsWithout: 1, readsWithout: 1 });
  });

  test.each([
    ['nobody heard anything', [], ['No read was given yet, so there is nothing to estimate.']],
    ['nobody counted', [aNight(day('2026-12-01'), [aRead()], { attendance: null })], ['For 1 night with 1 read no attendance was recorded; nothing is counted for it.']],
  ])('are not invented where %s', (_, nights, words) => {
    expect(audienceWords(audienceOf(nights))).toEqual(words);
  });
});

describe('the pace of several promises', () => {
  test('adds up what each of them last said, by day, up to the last day told', () => {
    const first = [{ on: day('2026-12-01'), expected: 1, given: 1 }, { on: day('2026-12-08'), expected: 2, given: 1 }, { on: day('2026-12-15'), expected: 3, given: 2 }];
    const second = [{ on: day('2026-12-08'), expected: 4, given: 5 }];
    expect(paceOfLines([first, second], day('2026-12-14'))).toEqual([{ on: '2026-12-01', expected: 1, given: 1 }, { on: '2026-12-08', expected: 6, given: 6 }]);
    expect(paceOfLines([], day('2026-12-14'))).toEqual([]);
  });
});

test.each([['00:05', '12:05 AM'], ['11:59', '11:59 AM'], ['12:00', '12:00 PM'], ['19:42', '7:42 PM']])('the clock %s is said %s', (clock, said) => {
  expect(clockWords(clock)).toBe(said);
});

test.each([
  ['given', null, null, 'Given'], ['makegood', null, day('2026-12-01'), 'Makegood for 2026-12-01'], ['makegood', null, null, 'Makegood'],
  ['notRead', 'no time', null, 'Not read: no time'], ['notRead', null, null, 'Not read'], ['takenBack', 'not counted after all', null, 'Taken back: not counted after all'],
] as const)('a read that was %s (%s) is told as it was', (outcome, why, forMissedOn, words) => {
  expect(outcomeWords({ outcome, why, forMissedOn }, (on) => on)).toBe(words);
});
