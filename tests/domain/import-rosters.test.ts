import { describe, expect, test } from 'vitest';
import { changesNothing } from '../../server/domain/season/import-plan.ts';
import { planRosterImport } from '../../server/domain/season/import-rosters.ts';
import type { RosterEntryThere, RostersThere } from '../../server/domain/season/import-rosters.ts';
import { aFile, inWords } from './import-files.ts';

const kestrels = { schoolId: 'tamarack', schoolName: 'Tamarack Ridge High School' };
const there: RostersThere = {
  teams: [
    { id: 'varsity', name: 'Girls Basketball', level: 'varsity', ...kestrels },
    { id: 'jv', name: 'Girls Basketball JV', level: 'juniorVarsity', ...kestrels },
  ],
  entries: [],
  players: [],
  numberRule: 'fingers',
};
const siobhan: RosterEntryThere = {
  id: 'entry-12', teamId: 'varsity', playerId: 'siobhan', number: '12', position: 'G', grade: '11', name: 'Siobhán Okafor', sayAs: 'shi-VAWN oh-KAH-for', announce: 'name',
};

describe('a roster from a file', () => {
  test('headings are found in any order and by their other names', () => {
    const plan = planRosterImport(aFile('Pos;GRADE;Last Name;First Name;Jersey #;Squad;Shoe size', 'G;11;Nguyễn;An;00;Girls Basketball;8'), there);
    expect(plan.steps[0]).toMatchObject({ action: 'create', wanted: { teamId: 'varsity', number: '00', name: 'An Nguyễn', grade: '11', position: 'G', announce: 'name', playerId: null } });
    expect(plan.ignoredHeadings).toEqual(['Shoe size']);
  });

  test('a file without numbers or with two name columns is refused whole', () => {
    expect(() => planRosterImport(aFile('Team,Name', 'Girls Basketball,An'), there)).toThrow('A column is missing: number.');
    expect(() => planRosterImport(aFile('No,Name,Player', '1,An,An'), there)).toThrow('Two columns mean the same: Name, Player.');
  });

  test.each([
    ['varsity girls basketball', 'create'],
    ['Tamarack Ridge High School Girls Basketball', 'create'],
    ['JV Girls Basketball', 'refuse team import-team-unknown'],
    ['Girls Basketball JV', 'create'],
    ['Curling', 'refuse team import-team-unknown'],
  ])('the team "%s": %s', (team, outcome) => {
    expect(inWords(planRosterImport(aFile('team,number,name', `${team},5,An Nguyễn`), there))).toEqual([`2 ${outcome}`]);
  });

  test('each row that cannot be taken says why', () => {
    const file = aFile(
      'team,number,name,announce',
      'Girls Basketball,5,An Nguyễn,yes',
      'Girls Basketball,5,Xochitl Reyes,yes',
      'Girls Basketball,A7,Mara Lund,yes',
      'Girls Basketball,,Ada Lund,yes',
      'Girls Basketball,10,,yes',
      'Girls Basketball,11,An Nguyễn,yes',
      'Girls Basketball,20,Ines Lund,maybe',
    );
    expect(inWords(planRosterImport(file, there))).toEqual([
      '2 create',
      '3 refuse number import-number-twice',
      '4 refuse number import-number-unreadable',
      '5 refuse number import-value-missing',
      '6 refuse name import-value-missing',
      '7 refuse name import-player-twice',
      '8 refuse announce import-choice-unknown',
    ]);
  });

  test('an odd number and 0 beside 00 are taken with a warning', () => {
    const plan = planRosterImport(aFile('team,number,name', 'Girls Basketball,16,A B', 'Girls Basketball,0,C D', 'Girls Basketball,00,E F'), there);
    expect(plan.tally.create).toBe(3);
    expect(plan.steps.map((step) => step.notes.length)).toEqual([1, 1, 1]);
  });

  test('a known player changes, a new one is created, one no longer named leaves the list', () => {
    const mara = { ...siobhan, id: 'entry-3', playerId: 'mara', number: '3', name: 'Mara Lund' };
    const plan = planRosterImport(aFile('team,number,name,grade', 'Girls Basketball,14,Siobhán Okafor,12', 'Girls Basketball,12,An Nguyễn,9'), { ...there, entries: [siobhan, mara] });
    expect(inWords(plan)).toEqual(['2 change number 12>14, grade 11>12', '3 create', '- drop 3 Mara Lund']);
  });

  test.each([
    ['4', '2 same'],
    ['12', '2 same'],
    ['5', '2 refuse name player-name-twice'],
  ])('of two with one name on a list, the number %s says which, and nobody gets the choice of the other family', (number, outcome) => {
    const other = { ...siobhan, id: 'entry-4', playerId: 'other-siobhan', number: '4', announce: 'silence' as const };
    const players = [siobhan, other].map(({ playerId, ...known }) => ({ ...known, id: playerId, schoolId: 'tamarack' }));
    const plan = planRosterImport(aFile('team,number,name', `Girls Basketball,${number},Siobhan Okafor`), { ...there, entries: [siobhan, other], players, keepMissing: true });
    expect(inWords(plan)).toEqual([outcome]);
  });

  test('players stay where the director asks to keep those not named, and their numbers stay taken', () => {
    const plan = planRosterImport(aFile('team,number,name', 'Girls Basketball,12,An Nguyễn'), { ...there, entries: [siobhan], keepMissing: true });
    expect(inWords(plan)).toEqual(['2 refuse number number-taken']);
  });

  test('an empty cell, a lost accent and last year’s list take nothing away', () => {
    const plan = planRosterImport(aFile('team,number,name,say as,announce', 'Girls Basketball,12,"Okafor, Siobhan",,yes'), { ...there, entries: [{ ...siobhan, announce: 'silence' }] });
    expect(plan.steps[0]).toMatchObject({ action: 'same', wanted: { name: 'Siobhán Okafor', sayAs: 'shi-VAWN oh-KAH-for', announce: 'silence' } });
    expect(plan.steps[0]?.notes[0]).toContain('stricter choice');
  });

  test('a file can make the choice of the family stricter', () => {
    const plan = planRosterImport(aFile('team,number,name,announce', 'Girls Basketball,12,Siobhán Okafor,number only'), { ...there, entries: [siobhan] });
    expect(inWords(plan)).toEqual(['2 change announce name>numberOnly']);
  });

  test('a player known from last year keeps how the name is said', () => {
    const players = [{ id: 'an', schoolId: 'tamarack', name: 'An Nguyễn', sayAs: 'ahn win', announce: 'numberOnly' as const }];
    const plan = planRosterImport(aFile('team,number,name', 'Girls Basketball,5,An Nguyen'), { ...there, players });
    expect(plan.steps[0]).toMatchObject({ action: 'create', wanted: { playerId: 'an', name: 'An Nguyễn', sayAs: 'ahn win', announce: 'numberOnly' } });
  });

  test.each([
    ['one of them at another school', 'quarry', ['2 create']],
    ['both at this school', 'tamarack', ['2 refuse name player-name-twice']],
  ])('of two players with one name, %s, nobody is picked by chance', (_, schoolId, expected) => {
    const player = { name: 'An Nguyễn', sayAs: 'ahn win', announce: 'name' as const };
    const players = [{ ...player, id: 'an', schoolId: 'tamarack', lastSeen: '5 of Varsity, Basketball 2026-27' }, { ...player, id: 'other', schoolId, announce: 'silence' as const }];
    const plan = planRosterImport(aFile('team,number,name', 'Girls Basketball,5,An Nguyen'), { ...there, players });
    expect(inWords(plan)).toEqual(expected);
  });

  test('the same file again changes nothing', () => {
    const file = aFile('number,name,grade,pos', '00,An Nguyễn,9,G', '12,Siobhán Okafor,11,F', '5,Xochitl Reyes,10,');
    const first = planRosterImport(file, { ...there, onlyTeamId: 'varsity' });
    expect(first.tally.create).toBe(3);
    const entries = first.steps.map((step, place) => ({ ...step.wanted!, id: `entry-${place}`, playerId: `player-${place}` }));
    const second = planRosterImport(file, { ...there, onlyTeamId: 'varsity', entries });
    expect(changesNothing(second)).toBe(true);
    expect(second.tally.same).toBe(3);
  });
});
