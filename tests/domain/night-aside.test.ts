import { expect, test } from 'vitest';
import { differencesInWords } from '../../server/domain/night/aside-differences.ts';
import { aLog, bankShot, gameBall } from './night-log.ts';

const read = aLog({ id: 'a', ...gameBall })[0]!;
const shot = aLog({ id: 'b', ...bankShot })[0]!;

test.each([
  ['the same entry', read, {}, []],
  ['a read that was not given after all', read, { outcome: 'notRead', reason: 'noTime' }, ['It says how it was read differently: given in the log, not read here.', 'It says the reason differently: nothing in the log, no time here.']],
  ['another kind', read, { kind: 'note', outcome: null }, ['It is another kind of entry: read in the log, note here.']],
  ['another number and clock', shot, { playerNumber: '21', clock: '5:30' }, ['It says the number differently: 12 in the log, 21 here.', 'It says the game clock differently: 5:32 in the log, 5:30 here.']],
  ['another team', shot, { teamId: 'herons' }, ['It names another team.']],
  ['what the server filled in', read, { commitmentId: null, gameId: null }, []],
  ['the same detail in another order', { ...shot, detail: { a: 1, b: { c: 2, d: 3 } } }, { detail: { b: { d: 3, c: 2 }, a: 1 } }, []],
  ['another detail', shot, { detail: { happening: 'dunk' } }, ['It differs in what belongs to its kind.']],
  ['another hour', read, { occurredAt: '2026-12-05T02:00:01.000Z' as never }, ['The device gave it another hour.']],
] as const)('%s', (_, inLog, change, lines) => {
  expect(differencesInWords(inLog, { ...inLog, ...change })).toEqual(lines);
});
