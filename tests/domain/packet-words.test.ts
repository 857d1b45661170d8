import { expect, test } from 'vitest';
import { wordDifference } from '../../server/domain/packet/word-difference.ts';

const signs = { same: '=', gone: '-', new: '+' } as const;
const shown = (before: string, after: string): string => wordDifference(before, after).map(({ kind, text }) => `${signs[kind]}${text}`).join('|');

test.each([
  ['Please rise now.', 'Please rise now.', '=Please rise now.'],
  ['Please rise now.', 'Please all rise now.', '=Please |+all |=rise now.'],
  ['Please all rise.', 'Please rise.', '=Please |-all |=rise.'],
  ['', 'All new.', '+All new.'],
  ['All gone.', '', '-All gone.'],
  ['', '', ''],
])('from “%s” to “%s”', (before, after, expected) => expect(shown(before, after)).toBe(expected));

test('what stayed and what went is the old text, what stayed and what came is the new one', () => {
  const [before, after] = ['The {{ homeNickname }} play.\n[[pause 3]]\nThank you.', 'Tonight the {{ homeNickname }} play.\n\n[[pause 5]]\nThank you all.'];
  const parts = wordDifference(before!, after!);
  expect(parts.filter(({ kind }) => kind !== 'new').map(({ text }) => text).join('')).toBe(before);
  expect(parts.filter(({ kind }) => kind !== 'gone').map(({ text }) => text).join('')).toBe(after);
});
