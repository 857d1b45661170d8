import { describe, expect, test } from 'vitest';
import { callLine } from '../../server/domain/night/desk/sheet/call-line.ts';
import type { NewDeskEntry } from '../../server/domain/night/desk/desk-entry.ts';
import { sheetOf } from '../../server/domain/night/desk/sheet/fold-line.ts';
import { periodName } from '../../server/domain/night/desk/sheet/period.ts';
import { profileFor } from '../../server/domain/season/sport-profile.ts';
import type { SportRules } from '../../server/domain/season/sport-rules.ts';
import { aNightBundle, DeskLog } from './desk-night.ts';

const game = aNightBundle().games[0]!;
const byQuarters = profileFor('basketball', 2026);
const [HERONS, KESTRELS] = ['team-herons', 'team-kestrels'];

/** What is called after the last of these entries. */
function call(entries: NewDeskEntry[], rules: SportRules = byQuarters, foulCountsRead = false) {
  const log = new DeskLog();
  for (const entry of entries) log.write(entry);
  return callLine(sheetOf(game, rules, log.lines), log.lines.at(-1)!, { ...game, foulCountsRead });
}
const said = (entry: NewDeskEntry, rules?: SportRules) => call([entry], rules)?.text ?? null;
const foul = (playerNumber: string | null, teamId = KESTRELS): NewDeskEntry => ({ kind: 'foul', teamId, playerNumber, period: '1st quarter' });

describe('a foul is called by name and without counts', () => {
  test.each([
    ['a player known by name', foul('23'), 'Foul on the Kestrels, number 23, Łukasz Wierzbicki.', 'WOO-kahsh vyezh-BIT-skee'],
    ['"number only"', foul('30'), 'Foul on the Kestrels, number 30.', null],
    ['"a member of the team"', foul('32'), 'Foul on the Kestrels, a member of the team.', null],
    ['silence', foul('50'), 'Foul on the Kestrels.', null],
    ['a number that is on no list', foul('41', HERONS), 'Foul on the Herons, number 41.', null],
    ['nobody', foul(null, HERONS), 'Foul on the Herons.', null],
  ])('%s', (_, entry, text, sayAs) => {
    expect(call([entry])).toMatchObject({ text, sayAs });
  });

  // NFHS 2014-15 Point of Emphasis: no number of fouls on a player, no team fouls; who shoots may be said (CHECKS PA-05, PA-06).
  test('counts stand in the note for the table, shots in the call', () => {
    expect(call(Array.from({ length: 5 }, () => foul('4', HERONS)))).toMatchObject({
      text: 'Foul on the Herons, number 4, Britta Sandoval. Two shots for the Kestrels.',
      note: '5th on number 4, the team’s 5th of the quarter. That is the limit: out of the game. Tell the official.',
    });
  });

  test('a department that reads counts has them in the call, save for a student who is not announced', () => {
    const read = (entry: NewDeskEntry) => call([foul('10'), entry], byQuarters, true)?.text;
    expect(read(foul('23'))).toBe('Foul on the Kestrels, number 23, Łukasz Wierzbicki, the player’s 1st, the team’s 2nd of the quarter.');
    expect(read(foul('32'))).toBe('Foul on the Kestrels, a member of the team, the team’s 2nd of the quarter.');
    expect(read(foul('50'))).toBe('Foul on the Kestrels, the team’s 2nd of the quarter.');
  });

  test('one and one is called where the half is counted', () => {
    expect(call(Array.from({ length: 7 }, () => foul(null, HERONS)), profileFor('basketball', 2022))?.text).toBe('Foul on the Herons. One and one for the Kestrels.');
  });
});

describe('other entries', () => {
  const kestrels = (kind: NewDeskEntry['kind'], detail: Record<string, unknown> | null = null, playerNumber: string | null = '0'): NewDeskEntry => ({ kind, teamId: KESTRELS, playerNumber, detail });

  test.each([
    ['a basket', kestrels('basket', { what: 'fieldGoal', points: 2 }), 'Kestrels, number 0, Xochitl Marchetti.'],
    ['a three', kestrels('basket', { what: 'threePointer', points: 3 }), 'Kestrels, number 0, Xochitl Marchetti, for three.'],
    ['a free throw', kestrels('basket', { what: 'freeThrow', points: 1 }), 'Kestrels, number 0, Xochitl Marchetti, the free throw.'],
    ['a basket by nobody announced', kestrels('basket', { what: 'fieldGoal', points: 2 }, '50'), 'Kestrels.'],
    ['a full time-out', kestrels('timeOut', { timeOut: 'full' }, null), 'Time-out, Kestrels. Full.'],
    ['a short time-out', kestrels('timeOut', { timeOut: 'thirty' }, null), 'Time-out, Kestrels. Thirty seconds.'],
    ['a substitution', kestrels('substitution'), 'Now in for the Kestrels, number 0, Xochitl Marchetti.'],
    ['the end of a quarter', { kind: 'periodEnd', period: '1st quarter' } as NewDeskEntry, 'End of the 1st quarter. Herons 0, Kestrels 0.'],
    ['the end of overtime', { kind: 'periodEnd', period: 'overtime' } as NewDeskEntry, 'End of overtime. Herons 0, Kestrels 0.'],
    ['a note', { kind: 'note', reason: 'Loud' } as NewDeskEntry, null],
  ])('%s', (_, entry, text) => {
    expect(said(entry)).toBe(text);
  });

  test('after the last quarter with one team ahead the final score is called, visitors first', () => {
    const end: NewDeskEntry = { kind: 'periodEnd', period: '4th quarter' };
    expect(call([kestrels('basket', { what: 'fieldGoal', points: 2 }), end])?.text).toBe('Final score: Herons 0, Kestrels 2.');
  });

  test.each([
    ['football', kestrels('score', { what: 'touchdown' }), 'Touchdown, Kestrels. Number 0, Xochitl Marchetti.'],
    ['football', kestrels('score', { what: 'safety' }, null), 'Safety, Kestrels.'],
    ['football', kestrels('timeOut', { timeOut: 'full' }, null), 'Time-out, Kestrels.'],
    ['soccer', kestrels('score', { what: 'goal' }, '30'), 'Goal, Kestrels. Number 30.'],
    ['volleyball', kestrels('serve'), 'Serving, Kestrels, number 0, Xochitl Marchetti.'],
    ['volleyball', kestrels('score', { what: 'point' }, null), null],
    ['volleyball', { kind: 'periodEnd', period: '1st set' } as NewDeskEntry, 'End of the 1st set. Herons 0, Kestrels 0. Sets: Herons 0, Kestrels 0.'],
    ['baseball', kestrels('batter'), 'Now batting, number 0, Xochitl Marchetti.'],
    ['baseball', { kind: 'periodEnd', period: '3rd inning' } as NewDeskEntry, 'End of the 3rd inning. Herons 0, Kestrels 0.'],
    ['wrestling', kestrels('bout', { weightClass: '126', how: 'fall' }), 'At 126 pounds the winner, by fall, Kestrels, Xochitl Marchetti. Team score: Herons 0, Kestrels 6.'],
    ['wrestling', kestrels('bout', { weightClass: '126', how: 'decision' }, '32'), 'At 126 pounds the winner, by decision, Kestrels, a member of the team. Team score: Herons 0, Kestrels 3.'],
    ['wrestling', { kind: 'bout', detail: { weightClass: '126', how: 'doubleForfeit' } } as NewDeskEntry, 'At 126 pounds, double forfeit. Team score: Herons 0, Kestrels 0.'],
  ] as const)('in %s, entry %#', (sport, entry, text) => {
    expect(said(entry, profileFor(sport, 2026))).toBe(text);
  });

  test('the position of a batter is said as the sport says it', () => {
    const baseball = profileFor('baseball', 2026);
    const home = { ...game.home, rows: game.home.rows.map((row) => ({ ...row, position: '1 SS' })) };
    const log = new DeskLog();
    log.write(kestrels('batter'));
    expect(callLine(sheetOf(game, baseball, log.lines), log.lines[0]!, { visitors: game.visitors, home, foulCountsRead: false })?.text).toBe('Now batting, the shortstop, number 0, Xochitl Marchetti.');
  });
});

test('nothing is called for an entry of another game', () => {
  expect(call([{ ...foul('4'), gameId: 'game-2' }])).toBeNull();
  expect(periodName(byQuarters, 4)).toBe('4th quarter');
});
