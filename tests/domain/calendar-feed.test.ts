import { describe, expect, test } from 'vitest';
import { dayOf } from '../../server/domain/day.ts';
import { instantAt, instantOf } from '../../server/domain/instant.ts';
import { calendarEntries } from '../../server/domain/season/calendar-feed.ts';
import type { FeedGame, FeedSitting } from '../../server/domain/season/calendar-feed.ts';
import { neededLines } from '../../server/domain/season/needed-people.ts';

const ZONE = 'America/Denver';
const FRIDAY = dayOf('2026-12-04');
const at = (clock: string, day = FRIDAY) => instantAt(day, clock, ZONE);

const sitting = (changes: Partial<FeedSitting> = {}): FeedSitting => ({ heldOn: FRIDAY, startsAt: null, venueName: 'Alder Fieldhouse', floorName: 'the Perch', address: null, lines: [], ...changes });

const game = (id: string, changes: Partial<FeedGame> = {}): FeedGame => ({
  id, label: 'Herons at Kestrels', teams: 'Port Ansel High School (Varsity boys) at Tamarack Ridge High School (Varsity boys)', sport: 'basketball', level: 'varsity',
  status: 'planned', playedOn: FRIDAY, movedFromOn: null, startsAt: at('19:00'), startsAfterGameId: null, startsAfterMinutes: null,
  calendarSequence: 0, calendarChangedAt: instantOf('2026-09-01T12:00:00.000Z'), sittings: [sitting()], ...changes,
});

const one = (changes: Partial<FeedGame>) => calendarEntries([game('a', changes)], ZONE)[0]!;

describe('where a game stands', () => {
  test.each([
    ['planned', {}, 'CONFIRMED', ''],
    ['planned', { startsAt: null }, 'TENTATIVE', ''],
    ['underWay', {}, 'CONFIRMED', ''],
    ['suspended', {}, 'CONFIRMED', ''],
    ['played', {}, 'CONFIRMED', ''],
    ['played', { startsAt: null }, 'CONFIRMED', ''],
    ['postponed', {}, 'CANCELLED', 'Postponed: '],
    ['postponed', { startsAt: null }, 'CANCELLED', 'Postponed: '],
    ['cancelled', {}, 'CANCELLED', 'Cancelled: '],
  ] as const)('a game that is %s (%o) is %s', (status, changes, expected, before) => {
    const entry = one({ status, ...changes });
    expect([entry.status, entry.summary]).toEqual([expected, `${before}Herons at Kestrels, varsity basketball`]);
  });

  test('one that is postponed or cancelled keeps its old hour, so that a calendar finds it', () => {
    for (const status of ['postponed', 'cancelled'] as const) expect(one({ status }).when).toEqual({ startsAt: at('19:00'), endsAt: at('20:30') });
  });
});

describe('the hours of a game', () => {
  test('end after the usual length, which is shorter below varsity', () => {
    expect(one({}).when).toEqual({ startsAt: '2026-12-05T02:00:00.000Z', endsAt: '2026-12-05T03:30:00.000Z' });
    expect(one({ level: 'juniorVarsity' }).when).toEqual({ startsAt: '2026-12-05T02:00:00.000Z', endsAt: '2026-12-05T03:15:00.000Z' });
  });

  test('are the whole day where nobody knows the hour', () => {
    expect(one({ startsAt: null })).toMatchObject({ when: { day: '2026-12-04', untilDay: '2026-12-05' }, description: expect.stringContaining('The hour is not set yet.') });
  });

  // Denver goes over to summer time on 2026-03-08 at 2 and back on 2026-11-01 at 2 (CHECKS.md, from tzdata).
  test.each([
    ['2026-03-07', '2026-03-08T02:00:00.000Z'],
    ['2026-03-08', '2026-03-09T01:00:00.000Z'],
    ['2026-10-31', '2026-11-01T01:00:00.000Z'],
    ['2026-11-01', '2026-11-02T02:00:00.000Z'],
  ])('7:00 PM on %s is %s', (day, startsAt) => {
    const playedOn = dayOf(day);
    expect(one({ playedOn, startsAt: at('19:00', playedOn) }).when).toMatchObject({ startsAt });
  });

  test('of one that starts after another are worked out from it, also past midnight and after the other one was moved away', () => {
    const first = game('a', { level: 'juniorVarsity', startsAt: at('17:30') });
    const second = game('b', { startsAt: null, startsAfterGameId: 'a', startsAfterMinutes: 20 });
    const of = (...games: FeedGame[]) => calendarEntries(games, ZONE).find((entry) => entry.uid.includes('game-b'))!;
    expect(of(first, second)).toMatchObject({ status: 'CONFIRMED', when: { startsAt: at('19:05'), endsAt: at('20:35') }, description: expect.stringContaining('20 minutes after the game before, about 7:05 PM.') });
    expect(of({ ...first, startsAt: at('23:30') }, second).when).toMatchObject({ startsAt: at('01:05', dayOf('2026-12-05')) });
    expect(of({ ...first, playedOn: dayOf('2026-12-11'), startsAt: at('17:30', dayOf('2026-12-11')) }, second).when).toMatchObject({ startsAt: at('19:05') });
    expect(of({ ...first, startsAt: null }, second).status).toBe('TENTATIVE');
    expect(of(second).status).toBe('TENTATIVE');
    expect(of({ ...first, startsAt: null, startsAfterGameId: 'b' }, second).status).toBe('TENTATIVE');
  });
});

describe('uid and sequence', () => {
  test('the uid is the game’s alone, wherever and whenever it is', () => {
    const uids = [{}, { playedOn: dayOf('2026-12-11'), startsAt: null }, { status: 'cancelled' as const }].map((changes) => one(changes).uid);
    expect(new Set(uids)).toEqual(new Set(['game-a@rafterline']));
  });

  test('the sequence counts the moves of the game before too, whose hour is this one’s, and the later change is the one that is dated', () => {
    const first = game('a', { calendarSequence: 4, calendarChangedAt: instantOf('2026-11-05T12:00:00.000Z') });
    const second = game('b', { calendarSequence: 2, startsAt: null, startsAfterGameId: 'a', startsAfterMinutes: 20 });
    const third = game('c', { calendarSequence: 1, startsAt: null, startsAfterGameId: 'b', startsAfterMinutes: 20 });
    expect(calendarEntries([first, second, third], ZONE).map(({ sequence, changedAt }) => [sequence, changedAt.slice(0, 10)])).toEqual([[4, '2026-11-05'], [6, '2026-11-05'], [7, '2026-11-05']]);
  });

  test('a game that was broken off has an entry for each sitting; the first keeps its hour, and what becomes of the game is said of the last', () => {
    const sittings = [sitting({ startsAt: at('19:00') }), sitting({ heldOn: dayOf('2026-12-05'), venueName: 'Ridge Gymnasium', floorName: null })];
    const broken = { playedOn: dayOf('2026-12-05'), movedFromOn: FRIDAY, startsAt: at('11:00', dayOf('2026-12-05')), sittings };
    const entries = calendarEntries([game('a', broken)], ZONE);
    expect(entries.map(({ uid, status, when, location }) => [uid, status, 'startsAt' in when && when.startsAt, location])).toEqual([
      ['game-a@rafterline', 'CONFIRMED', at('19:00'), 'Alder Fieldhouse (the Perch)'],
      ['game-a-2@rafterline', 'CONFIRMED', at('11:00', dayOf('2026-12-05')), 'Ridge Gymnasium'],
    ]);
    expect(entries[1]!.description).toContain('The rest of the game of Dec 4.');
    expect(calendarEntries([game('a', { ...broken, status: 'cancelled' })], ZONE).map(({ status }) => status)).toEqual(['CONFIRMED', 'CANCELLED']);
    expect(calendarEntries([game('a', { ...broken, sittings: [sitting(), sittings[1]!] })], ZONE)[0]).toMatchObject({ status: 'CONFIRMED', when: { day: FRIDAY } });
  });
});

describe('who is needed', () => {
  test.each([
    ['announcer', true, 'Announcer: Odell Okonkwo, arrives 5:45 PM'],
    ['announcer', false, 'Announcer, arrives 5:45 PM'],
    ['official', false, 'Official: Odell Okonkwo, arrives 5:45 PM'],
    ['scorer', true, 'Official scorer: Odell Okonkwo, arrives 5:45 PM'],
    ['clock', false, 'Clock, arrives 5:45 PM'],
    ['spotter', true, 'Spotter, arrives 5:45 PM'],
    ['singer', true, 'Singer, arrives 5:45 PM'],
    ['colourGuard', true, 'Color guard, arrives 5:45 PM'],
    ['presenter', true, 'Presenter, arrives 5:45 PM'],
    ['honouree', true, 'Honoree, arrives 5:45 PM'],
    ['other', true, 'Other, arrives 5:45 PM'],
  ])('%s (has an account: %s) reads "%s"', (role, hasAccount, line) => {
    expect(neededLines([{ role, name: 'Odell Okonkwo', hasAccount, arrives: '5:45 PM' }])).toEqual([line]);
  });

  test('nobody is said to be nobody, and without an hour none is said', () => {
    expect(neededLines([])).toEqual(['Nobody is named for this night yet.']);
    expect(neededLines([{ role: 'clock', name: 'x', hasAccount: false, arrives: null }])).toEqual(['Clock']);
  });
});
