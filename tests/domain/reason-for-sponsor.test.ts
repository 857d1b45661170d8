import { expect, test } from 'vitest';
import { reasonForSponsor } from '../../server/domain/reports/reason-for-sponsor.ts';

// The house rule: nothing a sponsor sees holds a student's name, and what is typed at the table may hold one.
test.each([
  ['no time', 'no time'],
  ['another reason', 'another reason'],
  ['the game was called off', 'the game was called off'],
  ['an injury, Xochitl Marlowe', 'an injury'],
  ['Xochitl Marlowe fainted', null],
  ['Xochitl Marlowe, an injury', null],
  ['no reason given', null],
  ['', null],
  [null, null],
])('of “%s” a sponsor is told %s', (why, told) => {
  expect(reasonForSponsor(why)).toBe(told);
});
