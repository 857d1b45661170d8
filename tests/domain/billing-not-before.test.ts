import { expect, test } from 'vitest';
import { checkNotBefore, dayOfStep } from '../../server/domain/billing/not-before.ts';
import { dayOf } from '../../server/domain/day.ts';
import { Refused, sentenceOfRefusal } from '../../server/domain/refusals.ts';

const causes = [
  { what: 'payment TR-P-2027-0001', on: dayOf('2027-03-05') },
  { what: 'invoice TR-2027-0001', on: dayOf('2027-03-10') },
];

const sentenceOf = (work: () => unknown): string | null => {
  try {
    work();
    return null;
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    return sentenceOfRefusal(error.code, error.details);
  }
};

// Common practice, no source.
test.each([
  ['on the day of its latest cause', '2027-03-10', causes, null],
  ['the day before it', '2027-03-09', causes, 'This cannot be dated 2027-03-09: invoice TR-2027-0001 is of 2027-03-10. Choose that day or a later one.'],
  ['long before it', '2027-02-28', causes, 'This cannot be dated 2027-02-28: invoice TR-2027-0001 is of 2027-03-10. Choose that day or a later one.'],
  ['on any day without a cause', '2027-02-28', [], null],
] as const)('a step %s is taken, or told both days', (_, on, of, sentence) => {
  expect(sentenceOf(() => checkNotBefore(dayOf(on), of))).toBe(sentence);
  expect(sentenceOf(() => dayOfStep(dayOf(on), dayOf('2027-01-01'), of))).toBe(sentence);
});

test.each([
  [null, '2027-03-09', '2027-03-10'],
  [null, '2027-03-11', '2027-03-11'],
  ['2027-03-12', '2027-03-11', '2027-03-12'],
] as const)('asked for %s and from %s on, a step lies on %s', (asked, from, day) => {
  expect(dayOfStep(asked && dayOf(asked), dayOf(from), causes)).toBe(day);
});
