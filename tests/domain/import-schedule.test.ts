import { describe, expect, test } from 'vitest';
import { dayOf } from '../../server/domain/day.ts';
import { changesNothing } from '../../server/domain/season/import-plan.ts';
import { planScheduleImport } from '../../server/domain/season/import-schedule.ts';
import type { GameThere, ScheduleThere, WantedGame } from '../../server/domain/season/import-schedule.ts';
import { centsOfCell, clockOfCell, countOfCell, dayOfCell } from '../../server/domain/season/import-values.ts';
import { aFile, inWords } from './import-files.ts';

describe('days and times as schedules write them', () => {
  test.each([
    ['2026-12-04', '2026-12-04'],
    ['12/4/2026', '2026-12-04'],
    ['12/04/26', '2026-12-04'],
    ['Fri 12/4/2026', '2026-12-04'],
    ['Friday, Dec 4, 2026', '2026-12-04'],
    ['December 4 2026', '2026-12-04'],
    ['2/29/2027', null],
    ['2/29/2028', '2028-02-29'],
    ['13/4/2026', null],
    ['12/4', null],
    ['soon', null],
  ])('%s is %s', (text, day) => {
    expect(dayOfCell(text)).toBe(day);
  });

  test.each([
    ['7:00 PM', '19:00'], ['7:00PM', '19:00'], ['7 pm', '19:00'], ['7p', '19:00'], ['7:00 p.m.', '19:00'], ['19:00', '19:00'], ['19:00:00', '19:00'],
    ['12:00 AM', '00:00'], ['12:15 pm', '12:15'], ['noon', '12:00'], ['07:00', '07:00'], ['8:00', '08:00'], ['TBA', null], ['', null],
  ])('%s is %s', (text, clock) => {
    expect(clockOfCell(text)).toEqual({ clock });
  });

  test.each([['7:00', 'unclear'], ['5:30', 'unclear'], ['7', 'unreadable'], ['25:00', 'unreadable'], ['13:00 PM', 'unreadable'], ['7:60 PM', 'unreadable'], ['after JV', 'unreadable']])(
    '%s is %s', (text, outcome) => {
      expect(clockOfCell(text)).toBe(outcome);
    },
  );

  test.each([
    ['1200', 120000], ['$1,200.00', 120000], ['1,200', 120000], ['1200.5', 120050], ['1200,50', 120050], ['0.07', 7], ['-5', null], ['1.200', null], ['12 dollars', null],
    ['90071992547409.91', 9007199254740991], ['90071992547409.92', null],
  ])('%s is %s cents', (text, cents) => {
    expect(centsOfCell(text)).toBe(cents);
  });

  test.each([['24', 24], ['100000', 100000], ['100001', null], ['2.5', null], ['-1', null]])('%s is the count %s', (text, count) => {
    expect(countOfCell(text)).toBe(count);
  });
});

const there: ScheduleThere = {
  season: { startsOn: dayOf('2026-11-15'), endsOn: dayOf('2027-03-10') },
  teams: [
    { id: 'varsity', name: 'Girls Basketball', level: 'varsity', schoolId: 'tamarack', schoolName: 'Tamarack Ridge High School' },
    { id: 'jv', name: 'Girls Basketball JV', level: 'juniorVarsity', schoolId: 'tamarack', schoolName: 'Tamarack Ridge High School' },
  ],
  schools: [
    { id: 'herons', name: 'Port Ansel High School', shortName: 'Port Ansel' },
    { id: 'miners', name: 'Quarry Bend High School', shortName: 'Quarry Bend' },
  ],
  venues: [
    { id: 'fieldhouse', name: 'Alder Fieldhouse', isOurs: true },
    { id: 'heron-gym', name: 'Heron Gym', isOurs: false },
  ],
  games: [],
};
const herons: GameThere = {
  id: 'herons-home', outsideId: null, playedOn: dayOf('2026-12-04'), clock: '19:00', teamId: 'varsity', opponentName: 'Port Ansel High School',
  venueName: 'Alder Fieldhouse', class: 'regular', isHome: true, announced: true, status: 'planned', hasLog: false,
};
const HEAD = 'Game ID,Date,Time,Team,Level,Opponent,Location,Type,H/A';
const plan = (lines: string[], change: Partial<ScheduleThere> = {}) => planScheduleImport(aFile(HEAD, ...lines), { ...there, ...change });

describe('a schedule from a file', () => {
  test('a new game is created with its school, venue, class and time', () => {
    expect(plan(['G-1,12/4/2026,7:00 PM,Girls Basketball,Varsity,Port Ansel,Alder Fieldhouse,League,Home']).steps[0]).toMatchObject({
      action: 'create',
      wanted: {
        outsideId: 'G-1', playedOn: '2026-12-04', clock: '19:00', teamId: 'varsity', opponentSchoolId: 'herons', opponentName: 'Port Ansel High School',
        venueId: 'fieldhouse', class: 'conference', isHome: true, announced: true,
      },
    });
  });

  test.each([
    ['Port Ansel', 'Alder Fieldhouse', '', true],
    ['Port Ansel', 'Heron Gym', '', false],
    ['@ Port Ansel', '', '', false],
    ['at Port Ansel', '', '', false],
    ['vs. Port Ansel', '', '', true],
    ['Port Ansel', '', 'A', false],
    ['Port Ansel', '', 'neutral', false],
  ])('"%s" in "%s" marked "%s" is at home: %s', (opponent, venue, mark, isHome) => {
    expect(plan([`,12/4/2026,7p,Girls Basketball,,${opponent},${venue},,${mark}`]).steps[0]?.wanted).toMatchObject({ isHome, announced: isHome, opponentSchoolId: 'herons' });
  });

  test('an opponent and a venue nobody knows are added and said so', () => {
    const step = plan([',12/4/2026,7p,Girls Basketball,,Linden Falls,Otter Hall,,home']).steps[0];
    expect(step?.wanted).toMatchObject({ opponentSchoolId: null, opponentName: 'Linden Falls', venueId: null, venueName: 'Otter Hall' });
    expect(step?.notes).toEqual(['Linden Falls is added as an opponent.', 'Otter Hall is added as a venue.']);
  });

  test('a game without a time comes in and is not announced until it has one', () => {
    const first = plan([',12/4/2026,TBA,Girls Basketball,,Port Ansel,,,home']);
    expect(first.steps[0]?.wanted).toMatchObject({ clock: null, announced: false });
    const then = plan([',12/4/2026,7p,Girls Basketball,,Port Ansel,,,home'], { games: [{ ...herons, clock: null, announced: false, venueName: null }] });
    expect(inWords(then)).toEqual(['2 move time >19:00, announced false>true']);
  });

  test('each row that cannot be taken says why', () => {
    const rows = [
      ',12/4/2026,7:00,Girls Basketball,,Port Ansel,,,',
      ',4.12.2026,7p,Girls Basketball,,Port Ansel,,,',
      ',7/4/2026,7p,Girls Basketball,,Port Ansel,,,',
      ',12/5/2026,7p,Curling,,Port Ansel,,,',
      ',12/6/2026,7p,Girls Basketball,Pros,Port Ansel,,,',
      ',12/7/2026,7p,Girls Basketball,,,,,',
      ',12/8/2026,7p,Girls Basketball,,Port Ansel,,Friendly,',
      'X,12/9/2026,7p,Girls Basketball,,Port Ansel,,,',
      'X,12/10/2026,7p,Girls Basketball,,Port Ansel,,,',
      ',12/9/2026,7p,Girls Basketball,,Port Ansel,,,',
    ];
    expect(inWords(plan(rows))).toEqual([
      '2 refuse time import-time-unclear',
      '3 refuse day import-day-unreadable',
      '4 refuse day import-day-outside-season',
      '5 refuse team import-team-unknown',
      '6 refuse level import-choice-unknown',
      '7 refuse opponent import-value-missing',
      '8 refuse class import-choice-unknown',
      '9 create',
      '10 refuse outsideId import-outside-id-twice',
      '11 refuse day import-game-twice',
    ]);
  });

  test('a game with an outside id moves with it, however far', () => {
    const games = [{ ...herons, outsideId: 'G-1' }, { ...herons, id: 'herons-2', playedOn: dayOf('2027-02-05') }];
    expect(inWords(plan(['G-1,2/4/2027,6:30 PM,Girls Basketball,,Port Ansel,,,', ',2/5/2027,7p,Girls Basketball,,Port Ansel,,,'], { games }))).toEqual([
      '2 move day 2026-12-04>2027-02-04, time 19:00>18:30',
      '3 same',
    ]);
  });

  test('without an outside id the nearest day of the same opponent is the game', () => {
    const games = [herons, { ...herons, id: 'herons-2', playedOn: dayOf('2027-01-29') }];
    expect(inWords(plan([',1/30/2027,7p,Girls Basketball,,Port Ansel,,,', ',12/5/2026,7p,Girls Basketball,,Port Ansel,,,'], { games }))).toEqual([
      '2 move day 2027-01-29>2027-01-30',
      '3 move day 2026-12-04>2026-12-05',
    ]);
  });

  test('a game the file no longer names is dropped, one with a log never, one of another team not at all', () => {
    const games = [
      herons,
      { ...herons, id: 'logged', playedOn: dayOf('2026-12-01'), status: 'played' as const, hasLog: true },
      { ...herons, id: 'jv', teamId: 'jv' },
    ];
    const dropping = plan([',12/11/2026,7p,Girls Basketball,,Quarry Bend,,,home'], { games });
    expect(inWords(dropping)).toEqual(['2 create', '- drop 2026-12-04 vs Port Ansel High School', '- refuse day game-has-log']);
    expect(inWords(plan([',12/11/2026,7p,Girls Basketball,,Quarry Bend,,,home'], { games, keepMissing: true }))).toEqual(['2 create']);
  });

  test('a game with a log does not move, not even by its outside id', () => {
    const games = [{ ...herons, outsideId: 'G-1', hasLog: true, status: 'underWay' as const }];
    expect(inWords(plan(['G-1,12/5/2026,7p,Girls Basketball,,Port Ansel,,,'], { games }))).toEqual(['2 refuse day game-cannot-be-moved']);
    expect(inWords(plan(['G-1,12/5/2026,7p,Girls Basketball,,Port Ansel,,,'], { games: [{ ...games[0]!, status: 'planned' }] }))).toEqual(['2 refuse day game-has-log']);
    expect(inWords(plan(['G-1,12/4/2026,7p,Girls Basketball,,Port Ansel,,,'], { games }))).toEqual(['2 same']);
  });

  test('a second meeting is a new game, not the move of one already played', () => {
    const games = [{ ...herons, status: 'played' as const, hasLog: false }];
    expect(inWords(plan([',12/4/2026,7p,Girls Basketball,,Port Ansel,,,', ',1/29/2027,7p,Girls Basketball,,Port Ansel,,,away'], { games }))).toEqual(['2 same', '3 create']);
  });

  test('a row that could not be read does not drop its game', () => {
    const games = [{ ...herons, outsideId: 'G-1' }];
    expect(inWords(plan(['G-1,sometime,7p,Girls Basketball,,Port Ansel,,,', ',12/11/2026,7p,Girls Basketball,,Quarry Bend,,,'], { games }))).toEqual([
      '2 refuse day import-day-unreadable', '3 create',
    ]);
  });

  test('the same file again changes nothing, semicolons and byte-order mark or not', () => {
    const rows = [
      'G-1,12/4/2026,7:00 PM,Girls Basketball,Varsity,Port Ansel,Alder Fieldhouse,League,Home',
      ',12/4/2026,5:30 PM,Girls Basketball JV,JV,Port Ansel,Alder Fieldhouse,,Home',
      ',12/11/2026,TBA,Girls Basketball,Varsity,@ Linden Falls,Otter Hall,,',
      ',1/8/2027,7:00 PM,Girls Basketball,Varsity,Port Ansel,Heron Gym,,Away',
    ];
    const first = plan(rows);
    expect(first.tally).toMatchObject({ create: 4, refuse: 0 });
    const games = first.steps.map((step, place) => stored(step.wanted!, place));
    const second = plan(rows, { games });
    expect(inWords(second)).toEqual(['2 same', '3 same', '4 same', '5 same']);
    const semicolons = planScheduleImport(aFile(...[`\uFEFF${HEAD}`, ...rows].map((line) => line.replaceAll(',', ';'))), { ...there, games });
    expect(changesNothing(semicolons)).toBe(true);
  });
});

/** A created game as it is read back: an away game lies in no night, so its venue is not kept. */
function stored(wanted: WantedGame, place: number): GameThere {
  return { ...wanted, id: `game-${place}`, venueName: wanted.announced ? wanted.venueName : null, status: 'planned', hasLog: false };
}
