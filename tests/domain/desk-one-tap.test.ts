import { expect, test } from 'vitest';
import type { DeskLine } from '../../server/domain/night/desk/desk-entry.ts';
import { frozenLog } from '../../server/domain/night/desk/frozen-log.ts';
import { isBounce, lastToTakeBack, mayGoBackByOneTap } from '../../server/domain/night/desk/one-tap.ts';

const line = (id: string, more: Partial<DeskLine> = {}): DeskLine => ({
  id, deviceId: 'here', sequence: 1, kind: 'note', outcome: null, reason: id, gameId: null, cueKey: null, placementId: null, commitmentId: null, windowKey: null, teamId: null,
  playerNumber: null, period: null, clock: null, detail: null, happeningEntryId: null, takesBackEntryId: null, occurredAt: '2026-12-05T02:00:00.000Z', place: 'onDevice', number: null,
  isOwn: true, sentence: null, ...more,
});
const gone = (id: string, target: string) => line(id, { kind: 'takenBack', takesBackEntryId: target });

test.each([
  [null, 10, false],
  [1000, 1000, true],
  [1000, 1499, true],
  [1000, 1500, false],
])('after a tap at %j one at %i is a bounce: %j', (last, now, bounces) => {
  expect(isBounce(last, now)).toBe(bounces);
});

test.each([
  ['the last own line', [line('a'), line('b')], 'b'],
  ['the one before a line that is taken back', [line('a'), line('b'), gone('c', 'b')], 'a'],
  ['no line of another device', [line('a'), line('b', { isOwn: false })], 'a'],
  ['no line that needs attention', [line('a'), line('b', { place: 'needsAttention' })], 'a'],
  ['nothing right after a hold', [line('a'), line('b', { kind: 'hold' })], null],
  ['what was logged after a hold', [line('a', { kind: 'hold' }), line('b')], 'b'],
  ['nothing in an empty log', [], null],
])('take back last takes %s', (_what, lines, id) => {
  expect(lastToTakeBack(lines)?.id ?? null).toBe(id);
});

test.each([
  ['an own line', line('a'), true],
  ['a line of another device', line('a', { isOwn: false, place: 'onServer' }), true],
  ['a hold', line('a', { kind: 'hold' }), false],
  ['a taking back', gone('a', 'b'), false],
  ['a line that needs attention', line('a', { place: 'needsAttention' }), false],
])('%s goes back by one tap: %s', (_what, one, may) => {
  expect(mayGoBackByOneTap(one)).toBe(may);
});

test.each([
  ['as it was', [line('a'), line('b')], ['b', 'a'], 0],
  ['without what came later', [line('a'), line('b'), line('c')], ['b', 'a'], 1],
  ['in its order when numbers change the log’s', [line('b'), line('a')], ['b', 'a'], 0],
  ['with a taking back only on its line', [line('a'), line('b'), gone('c', 'a')], ['b', 'a'], 0],
  ['with both counted where a later line was taken back', [line('a'), line('b'), line('c'), gone('d', 'c')], ['b', 'a'], 2],
])('the open log stays %s', (_how, lines, ids, count) => {
  const { shown, newCount } = frozenLog(lines, ['b', 'a']);
  expect([shown.map(({ id }) => id), newCount]).toEqual([ids, count]);
});
