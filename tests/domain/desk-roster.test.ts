import { describe, expect, test } from 'vitest';
import { readPastedRoster } from '../../server/domain/night/desk/sheet/roster-paste.ts';
import { rosterTonight } from '../../server/domain/night/desk/sheet/roster-tonight.ts';
import { isSameName, planWorn, wornWarnings } from '../../server/domain/night/desk/sheet/worn-tonight.ts';
import { INSTEAD } from '../../server/domain/packet/line-up.ts';
import { profileFor } from '../../server/domain/season/sport-profile.ts';
import { aNightBundle, DeskLog } from './desk-night.ts';

const game = aNightBundle().games[0]!;
const herons = game.visitors;
const kestrels = game.home;
const basketball = profileFor('basketball', 2026);

describe('a pasted list is read line by line', () => {
  test.each([
    ['12 Łukasz Wren', '12', 'Łukasz Wren', null],
    ['#12 Łukasz Wren (WOO-kahsh ren)', '12', 'Łukasz Wren', 'WOO-kahsh ren'],
    ['No. 12 - Łukasz Wren /WOO-kahsh ren/', '12', 'Łukasz Wren', 'WOO-kahsh ren'],
    ['12\tŁukasz Wren\tWOO-kahsh ren', '12', 'Łukasz Wren', 'WOO-kahsh ren'],
    ['12, Łukasz Wren, ren', '12', 'Łukasz Wren', 'ren'],
    ['12\tŁukasz Wren\tG\t11\t6-2\tWOO-kahsh', '12', 'Łukasz Wren', 'WOO-kahsh'],
    ['12,Wren,Łukasz', '12', 'Łukasz Wren', null],
    ['12 Wren, Łukasz [ren]', '12', 'Łukasz Wren', 'ren'],
    ['00. Juno  Halloran', '00', 'Juno Halloran', null],
    ['\ufeff5\u00a0Anne-Marie O’Dell', '5', 'Anne-Marie O’Dell', null],
    ['7: Nguyễn Thị Bảo', '7', 'Nguyễn Thị Bảo', null],
  ])('%s', (text, number, name, sayAs) => {
    expect(readPastedRoster(text)).toEqual({ players: [{ number, name, sayAs }], refused: [] });
  });

  test.each([
    ['Łukasz Wren', 'It begins with no number.'],
    ['12', 'No name stands behind 12.'],
    ['12 ,', 'No name stands behind 12.'],
    ['12 (ren)', 'No name stands behind 12.'],
    ['1234 Łukasz Wren', '1234 is too long for a number on a shirt.'],
    ['12 44', '“44” is not a name.'],
    [`12 ${'W'.repeat(81)}`, 'A name may have 80 letters at most.'],
  ])('%s is refused', (text, sentence) => {
    expect(readPastedRoster(text)).toMatchObject({ players: [], refused: [{ line: 1, sentence }] });
  });

  test('a number that stands twice is refused the second time, empty lines count, the others are kept', () => {
    const { players, refused } = readPastedRoster('4 Britta Sandoval\r\n\r\n4 Mette Lund\nCoach Arkwright\n5 Mette Lund');
    expect(players.map((player) => player.number)).toEqual(['4', '5']);
    expect(refused.map(({ line, sentence }) => `${line} ${sentence}`)).toEqual(['3 4 stands in line 1 already.', '4 It begins with no number.']);
  });
});

describe('what is typed changes tonight’s list', () => {
  const plan = (number: string, name: string, sayAs: string | null = null) => planWorn(herons, [{ number, name, sayAs }], false)[0]!;

  test.each([
    ['as it is on the list', '4', 'britta sandoval', null, null, 'On the list as it is.'],
    ['with how to say it', '4', 'Britta Sandoval', 'BRIT-uh', { name: 'Britta Sandoval', sayAs: 'BRIT-uh' }, 'How to say it is new.'],
    ['under another number', '24', 'Britta Sandoval', null, { name: 'Britta Sandoval', wornInstead: '4' }, 'Wears 24 tonight instead of 4.'],
    ['somebody new', '41', 'Łukasz Wren', 'ren', { name: 'Łukasz Wren', sayAs: 'ren' }, 'New tonight.'],
    ['somebody new under a known number', '4', 'Łukasz Wren', null, { name: 'Łukasz Wren' }, 'Takes the place of Britta Sandoval under 4.'],
    ['a number whose family chose against the name', '33', 'Zuleika Amari', 'zoo', null, 'Number 33 is not announced by name: the family chose so. No name is kept.'],
  ])('%s', (_, number, name, sayAs, detail, sentence) => {
    const { entry, sentence: told } = plan(number, name, sayAs);
    expect([entry?.detail ?? null, told]).toEqual([detail, sentence]);
  });

  test('the list of the night follows the entries, and what is taken back is gone from it', () => {
    const log = new DeskLog();
    const first = log.write(plan('24', 'Britta Sandoval', 'BRIT-uh').entry!);
    log.write(plan('41', 'Łukasz Wren', 'ren').entry!);
    const named = () => rosterTonight(herons, log.lines, false).rows.map((row) => `${row.number} ${row.name ?? '-'}${row.sayAs ? ` (${row.sayAs})` : ''}`);
    expect(named()).toEqual(['00 Juno Halloran', '24 Britta Sandoval (BRIT-uh)', '5 Mette Lund', '11 Cosima Vane', '14 Fern Gallagher', '22 Rosalind Teague', '25 Ysolde Prue', '33 -', '41 Łukasz Wren (ren)']);
    log.write(planWorn(rosterTonight(herons, log.lines, false), [{ number: '30', name: 'Britta Sandoval', sayAs: null }], false)[0]!.entry!);
    expect(named()).toContain('30 Britta Sandoval (BRIT-uh)');
    log.takeBack(first.id);
    expect(named()).not.toContain('24 Britta Sandoval (BRIT-uh)');
  });

  test('two players may swap their shirts', () => {
    const log = new DeskLog();
    for (const [number, name, wornInstead] of [['5', 'Britta Sandoval', '4'], ['4', 'Mette Lund', '5']] as const) {
      log.write({ kind: 'worn', teamId: herons.teamId, playerNumber: number, detail: { name, wornInstead } });
    }
    const rows = rosterTonight(herons, log.lines, false).rows;
    expect([rows.find((row) => row.number === '5')?.name, rows.find((row) => row.number === '4')?.name]).toEqual(['Britta Sandoval', 'Mette Lund']);
  });

  test('no name comes to a student who is not announced by name, whatever an entry says', () => {
    const log = new DeskLog();
    log.write({ kind: 'worn', teamId: herons.teamId, playerNumber: '33', detail: { name: 'Zuleika Amari', sayAs: 'zoo' } });
    log.write({ kind: 'worn', teamId: herons.teamId, playerNumber: '34', detail: { name: 'Zuleika Amari', wornInstead: '33' } });
    expect(rosterTonight(herons, log.lines, false).rows.find((row) => row.number === '34')).toMatchObject({ name: null, sayAs: null, instead: INSTEAD.numberOnly });
  });

  test.each([
    ['a name that is on it, under its number', '15', 'tamsin orlebar', null, 'On the list as it is.'],
    ['how a name on it is said', '15', 'Tamsin Orlebar', { name: 'Tamsin Orlebar', sayAs: 'TAM-zin' }, 'How to say it is new.'],
    ['a name that is on it, under another number', '51', 'Tamsin Orlebar', { name: 'Tamsin Orlebar', wornInstead: '15' }, 'Wears 51 tonight instead of 15.'],
    ['a withheld name under its number', '30', 'Ottilie Strand', null, 'Number 30 is not announced by name: the family chose so. No name is kept.'],
    ['a withheld name under another number', '51', 'Ottilie Strand', { isNotListed: true }, 'Not on our list, so called number 51 only. No name is kept.'],
    ['a withheld name under the number of somebody else', '15', 'Wilhelmina Astor', { isNotListed: true }, 'Not on our list, so called number 15 only. No name is kept.'],
  ])('our own list takes %s', (_, number, name, detail, sentence) => {
    const { entry, sentence: told, keepsName } = planWorn(kestrels, [{ number, name, sayAs: sentence.startsWith('How') ? 'TAM-zin' : null }], true)[0]!;
    expect([entry?.detail ?? null, told, keepsName]).toEqual([detail, sentence, !sentence.endsWith('No name is kept.')]);
    const log = new DeskLog();
    if (entry) log.write(entry);
    const row = rosterTonight(kestrels, log.lines, true).rows.find((one) => one.number === number);
    expect(row?.name ?? null).toBe(sentence.endsWith('No name is kept.') ? null : 'Tamsin Orlebar');
  });

  test('a number without a name on our list is planned once', () => {
    const log = new DeskLog();
    const planned = () => planWorn(rosterTonight(kestrels, log.lines, true), [{ number: '51', name: 'Ottilie Strand', sayAs: null }], true)[0]!.entry;
    log.write(planned()!);
    expect(planned()).toBeNull();
  });

  test.each([
    ['a new number', { name: 'Ottilie Strand', sayAs: 'oh-TIL-ee' }, '51'],
    ['the number of somebody else', { name: 'Ottilie Strand', sayAs: 'oh-TIL-ee' }, '15'],
    ['a number worn instead of another', { name: 'Ottilie Strand', sayAs: 'oh-TIL-ee', wornInstead: '15' }, '51'],
  ])('a name that another device stored for our list is not shown under %s', (_, detail, playerNumber) => {
    const log = new DeskLog();
    log.write({ kind: 'worn', teamId: kestrels.teamId, playerNumber, detail });
    const ours = rosterTonight(kestrels, log.lines, true);
    expect(ours.rows.find((row) => row.number === playerNumber)).toMatchObject({ name: null, sayAs: null });
    expect(JSON.stringify(ours)).not.toContain('Ottilie');
  });

  test('numbers keep their places when a player is added, and the new one stands at the end', () => {
    const log = new DeskLog();
    log.write(plan('1', 'Łukasz Wren').entry!);
    expect(rosterTonight(herons, log.lines, false).rows.map((row) => row.number)).toEqual([...herons.rows.map((row) => row.number), '1']);
  });

  // CHECKS B-44, B-46 (NFHS 3-4-3): a warning and never a refusal.
  test('odd numbers warn and are kept', () => {
    expect(wornWarnings(basketball, [{ number: '16' }, { number: '0' }, { number: '00' }])).toEqual([
      '16 is not a number the rules of this sport allow. It is kept as listed.', 'A team list may not hold both 0 and 00. Ask the coach which player changes.',
    ]);
  });

  test('names are the same in spite of accents and capitals, and empty ones are not', () => {
    expect([isSameName('Siobhán  Delacroix', 'siobhan delacroix'), isSameName('', ''), isSameName(null, 'x')]).toEqual([true, false, false]);
  });
});

test('the choices of families are the words of the line-up', () => {
  expect(Object.values(INSTEAD)).toEqual([null, 'number only', 'a member of the team', 'do not announce']);
});
