import { describe, expect, test } from 'vitest';
import { inOrder, minutesAndSeconds, planHonoursImport, wordsToLeaveOut } from '../../server/domain/packet/honours.ts';
import type { HonoursThere } from '../../server/domain/packet/honours.ts';
import { readCsv } from '../../server/season/csv.ts';

const there = (extra: Partial<HonoursThere> = {}): HonoursThere => ({
  students: [{ id: 'p1', name: 'Łukasz Wren' }, { id: 'p2', name: 'Nguyễn Tam' }, { id: 'p3', name: 'Ada Lind' }, { id: 'p4', name: 'Ada Lind' }],
  onList: [], keepMissing: false, ...extra,
});
const plan = (csv: string, of = there()) => planHonoursImport(readCsv(Buffer.from(csv)), of);
const rows = (csv: string, of?: HonoursThere) => plan(csv, of).steps.map(({ action, label, wanted, problems }) => [action, label, wanted?.playerId ?? problems[0]?.code ?? null]);

describe('a file of honored students', () => {
  test('finds students by name, accents and order of names aside, and makes the others new', () => {
    expect(rows('Student,Escorts,Order,One line\r\n"Wren, Lukasz",his parents,2,Plays the tuba\r\nnguyen tam,,1,\r\nMette Orr,"Ola ""Bo"" Orr",,"Two lines\nin one cell"\r\n')).toEqual([
      ['create', 'Lukasz Wren', 'p1'], ['create', 'nguyen tam', 'p2'], ['create', 'Mette Orr', null],
    ]);
    expect(plan('student\nMette Orr\n').steps[0]!.notes.join()).toContain('ask the family');
  });

  // RFC 4180: quoted fields, doubled quotes, breaks inside a field.
  test('keeps what stands in quotes', () => {
    const [step] = plan('student;with;line\n"Orr, Mette";"Ola ""Bo"" Orr, with Kai";"Two\nlines"\n').steps;
    expect(step!.wanted).toMatchObject({ name: 'Mette Orr', escorts: 'Ola "Bo" Orr, with Kai', line: 'Two\nlines' });
  });

  test.each([
    ['student,order\nLuka Orr,first', 'import-order-unreadable'],
    ['student,order\nLuka Orr,0', 'import-order-unreadable'],
    ['student,order\nLuka Orr,501', 'import-order-unreadable'],
    ['student,order\n,1', 'import-value-missing'],
    ['student\nAda Lind', 'import-student-unclear'],
    [`student,line\nLuka Orr,${'x'.repeat(301)}`, 'import-value-too-long'],
    [`student,escorts\nLuka Orr,${'x'.repeat(201)}`, 'import-value-too-long'],
  ])('%j is named with its line', (csv, code) => {
    const [step] = plan(csv).steps;
    expect([step!.action, step!.problems[0]?.code, step!.problems[0]?.line]).toEqual(['refuse', code, 2]);
  });

  test.each([[`student,line\nLuka Orr,${'x'.repeat(300)}`], ['student,order\nLuka Orr,500']])('%j fits', (csv) => expect(plan(csv).tally.refuse).toBe(0));

  test('a student twice, and one place twice, are refused with the line that came before', () => {
    expect(plan('student,order\nLuka Orr,1\nluka  orr,2\nMette Orr,1\n').steps.map((step) => step.problems.map((one) => [one.line, one.code]))).toEqual([
      [], [[3, 'import-student-twice']], [[4, 'honours-place-taken']],
    ]);
    expect(plan('student\nLuka Orr\nLuka Orr').steps[1]!.problems[0]!.sentence).toContain('line 2');
  });

  test('changes, leaves and drops those on the list', () => {
    const onList = [{ playerId: 'p1', name: 'Łukasz Wren', place: 1, escorts: 'his parents', line: null }, { playerId: 'p2', name: 'Nguyễn Tam', place: 2, escorts: null, line: null }];
    expect(rows('student,escorts\nŁukasz Wren,his parents\n', there({ onList }))).toEqual([['same', 'Łukasz Wren', 'p1'], ['drop', 'Nguyễn Tam', null]]);
    expect(plan('student,escorts\nŁukasz Wren,his aunt\n', there({ onList, keepMissing: true })).steps.map((step) => [step.action, step.changes])).toEqual([['change', [{ field: 'escorts', before: 'his parents', after: 'his aunt' }]]]);
  });

  test('those with a place come first, by it', () => {
    expect(inOrder([{ order: null, id: 'a' }, { order: 2, id: 'b' }, { order: 1, id: 'c' }, { order: null, id: 'd' }]).map(({ id }) => id)).toEqual(['c', 'b', 'a', 'd']);
  });
});

// 20 U.S.C. 1232g(a)(5)(A); 34 CFR 99.3.
test.each([
  ['Carries a 4.0 GPA', ['4.0 GPA']], ['grade-point average of 3.9', ['grade-point']], ['Back after knee surgery', ['surgery']], ['ranked 3rd in her class', ['ranked 3rd in her class']],
  ['Has an IEP', ['IEP']], ['Was suspended once', ['suspended']], ['student ID 4411', ['student ID']],
  ['Plays guard, in her fourth year, honors choir, will study forestry', []], ['All-conference in 2026', []], ['5 feet 9, from Alder Street', []],
])('of “%s” %j is left out', (line, words) => expect(wordsToLeaveOut(line)).toEqual(words));

test.each([[14 * 20, '4 min 40 s'], [60, '1 min'], [59, '59 s'], [0, '0 s']])('%i seconds are %s', (seconds, text) => expect(minutesAndSeconds(seconds)).toBe(text));
