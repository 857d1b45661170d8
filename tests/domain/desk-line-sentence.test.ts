import { expect, test } from 'vitest';
import type { NewDeskEntry } from '../../server/domain/night/desk/desk-entry.ts';
import { sentenceOfLine } from '../../server/domain/night/desk/line-sentence.ts';
import { profileFor } from '../../server/domain/season/sport-profile.ts';
import { aNightBundle, DeskLog } from './desk-night.ts';

const bundle = aNightBundle();
const [theirs, ours] = ['team-herons', 'team-kestrels'];
const worn = (teamId: string, playerNumber: string, detail: Record<string, unknown>): NewDeskEntry => ({ kind: 'worn', teamId, playerNumber, detail });
const foul = (teamId: string, playerNumber: string): NewDeskEntry => ({ kind: 'foul', teamId, playerNumber, period: '1st quarter' });

/** The sentence of the last line. */
function told(entries: readonly NewDeskEntry[], night = bundle): string {
  const log = new DeskLog();
  for (const entry of entries) log.write(entry);
  return sentenceOfLine(log.lines.at(-1)!, night, log.lines);
}

test.each<[string, NewDeskEntry[], string]>([
  ['as listed', [foul(theirs, '4')], 'Foul on number 4, Britta Sandoval, of the Herons (1st quarter).'],
  ['in a swapped shirt', [worn(theirs, '5', { name: 'Britta Sandoval', wornInstead: '4' }), worn(theirs, '4', { name: 'Mette Lund', wornInstead: '5' }), foul(theirs, '4')], 'Foul on number 4, Mette Lund, of the Herons (1st quarter).'],
  ['added at the table', [worn(theirs, '41', { name: 'Łukasz Wren' }), foul(theirs, '41')], 'Foul on number 41, Łukasz Wren, of the Herons (1st quarter).'],
  ['on no list', [foul(theirs, '99')], 'Foul on number 99, of the Herons (1st quarter).'],
  ['whose family chose against the name', [foul(ours, '30')], 'Foul on number 30, of the Kestrels (1st quarter).'],
  ['in the shirt of a listed one, without being on our list', [worn(ours, '15', { isNotListed: true }), foul(ours, '15')], 'Foul on number 15, of the Kestrels (1st quarter).'],
  ['whom another device named without our list', [worn(ours, '51', { name: 'Ottilie Strand' }), foul(ours, '51')], 'Foul on number 51, of the Kestrels (1st quarter).'],
])('a line names a player %s as worn tonight', (_, entries, sentence) => {
  expect(told(entries)).toBe(sentence);
});

test.each([
  ['full', 'Full time-out, the Kestrels (2nd quarter, 3:10).'],
  ['thirty', 'Thirty-second time-out, the Kestrels (2nd quarter, 3:10).'],
  [null, 'Time-out, the Kestrels (2nd quarter, 3:10).'],
])('a time-out of the kind %s is told as one', (timeOut, sentence) => {
  expect(told([{ kind: 'timeOut', teamId: ours, period: '2nd quarter', clock: '3:10', detail: timeOut === null ? null : { timeOut } }])).toBe(sentence);
});

test('where a sport has one kind of time-out, no kind is told', () => {
  const football = { ...bundle, games: bundle.games.map((game) => ({ ...game, rules: profileFor('football', 2026) })) };
  expect(told([{ kind: 'timeOut', teamId: ours, detail: { timeOut: 'full' } }], football)).toBe('Time-out, the Kestrels.');
});

test.each([
  [{ what: 'start', clock: '19:12' }, 'The start moves to 7:12 PM.'],
  [{ what: 'start', clock: '24:00' }, 'A time moves.'],
  [{ what: 'halftime', seconds: 600 }, 'Halftime is 10 minutes tonight.'],
  [{ what: 'halftime', seconds: 60 }, 'Halftime is 1 minute tonight.'],
  [{}, 'A time moves.'],
])('a moved time %o is told as the wall clock says it', (detail, sentence) => {
  expect(told([{ kind: 'timeMoved', gameId: 'game-1', detail }])).toBe(sentence);
});
