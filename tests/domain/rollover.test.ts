import { expect, test } from 'vitest';
import { linesFollowed } from '../../server/domain/sponsorship/rollover/lines-followed.ts';

const line = (id: string, readKindId: string, place: number) => ({ id, readKindId, place });

test.each([
  ['the same kind at the same place', [line('a', 'ball', 1), line('b', 'snack', 2)], [line('A', 'ball', 1), line('B', 'snack', 2)], ['A', 'B']],
  ['two lines of one kind, each at its place', [line('a', 'ball', 1), line('b', 'ball', 2)], [line('A', 'ball', 1), line('B', 'ball', 2)], ['A', 'B']],
  ['the one line of its kind that moved', [line('a', 'ball', 1), line('b', 'snack', 2)], [line('B', 'snack', 1), line('A', 'ball', 2)], ['A', 'B']],
  ['a line that was left out', [line('a', 'ball', 1), line('b', 'snack', 2)], [line('A', 'ball', 1)], ['A', null]],
  ['two that moved, so nobody can say which', [line('a', 'ball', 1), line('b', 'ball', 2)], [line('X', 'snack', 1), line('Y', 'snack', 2), line('A', 'ball', 3), line('B', 'ball', 4)], [null, null]],
  ['another kind at its place', [line('a', 'ball', 1)], [line('X', 'snack', 1)], [null]],
])('a line of the next contract stands for one of the contract before: %s', (_, before, after, expected) => {
  expect(linesFollowed(before, after).map((one) => one.nextLineId)).toEqual(expected);
});
