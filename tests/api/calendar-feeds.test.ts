import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { aSeason } from '../support/season.ts';
import type { Season } from '../support/season.ts';
import { Visitor } from '../support/visitor.ts';

const EARLY = { overrideReason: 'the test does not wait for the night' };

async function aFeed(department: Department, calendar: 'games' | 'nights' = 'games') {
  const made: { id: string; address: string } = await department.director.make('/api/calendar-feeds', { calendar, label: 'The families' });
  const path = new URL(made.address, department.director.baseUrl).pathname;
  const fetchIt = (headers: Record<string, string> = {}) => fetch(department.director.baseUrl + path, { headers });
  const text = async () => {
    const answer = await fetchIt();
    if (answer.status !== 200) throw new Error(`${path} answered ${answer.status}`);
    return answer.text();
  };
  return { id: made.id, path, fetchIt, text, events: async () => eventsIn(await text()) };
}

interface FeedEvent extends Record<'uid' | 'summary' | 'description' | 'status' | 'changedAt' | 'stamp' | 'start' | 'end', string> {
  location: string | null;
  sequence: number;
  isAllDay: boolean;
}

/** As a program that is not ours reads it. */
function eventsIn(text: string): FeedEvent[] {
  const calendar = new ICAL.Component(ICAL.parse(text));
  return calendar.getAllSubcomponents('vevent').map((component: InstanceType<typeof ICAL.Component>) => {
    const event = new ICAL.Event(component);
    return {
      uid: event.uid, summary: event.summary, description: event.description, location: event.location, sequence: event.sequence,
      status: String(component.getFirstPropertyValue('status')), changedAt: String(component.getFirstPropertyValue('last-modified')), stamp: String(component.getFirstPropertyValue('dtstamp')),
      isAllDay: event.startDate.isDate, start: event.startDate.isDate ? event.startDate.toString() : event.startDate.toJSDate().toISOString(), end: event.endDate.isDate ? event.endDate.toString() : event.endDate.toJSDate().toISOString(),
    };
  });
}

async function aPlace() {
  const department = await aDepartment();
  const season = await aSeason(department, 2);
  const feed = await aFeed(department);
  const { gameId } = season.games[0]!;
  const game = async () => (await feed.events()).find((event) => event.uid === `game-${gameId}@rafterline`)!;
  const version = async () => (await department.director.look(`/api/games/${gameId}`)).version as number;
  return { department, director: department.director, season, feed, gameId, game, version };
}

describe('a calendar of games', () => {
  test('says to a program that is not ours who plays whom, at what level, when and where', async () => {
    const { department, feed, gameId, game } = await aPlace();
    const text = await feed.text();
    const calendar = new ICAL.Component(ICAL.parse(text));
    expect([calendar.getFirstPropertyValue('version'), calendar.getFirstPropertyValue('x-wr-calname'), String(calendar.getFirstPropertyValue('refresh-interval')), calendar.getFirstPropertyValue('x-published-ttl')]).toEqual(['2.0', `${department.name}: games`, 'PT1H', 'PT1H']);
    expect(await feed.events()).toHaveLength(2);
    const found = await game();
    expect(found).toMatchObject({
      uid: `game-${gameId}@rafterline`, sequence: 0, status: 'CONFIRMED', summary: 'Herons at Kestrels, varsity basketball', location: 'Alder Fieldhouse (the Perch)',
      description: 'Port Ansel High School (Varsity boys) at Tamarack Ridge High School (Varsity boys)', start: '2026-12-05T02:00:00.000Z', end: '2026-12-05T03:30:00.000Z',
    });
    expect(found.stamp).toBe(found.changedAt);
  });

  test('is written as RFC 5545 asks: CRLF, lines of at most 75 octets that break no letter, text escaped', async () => {
    const { director, season, feed } = await aPlace();
    const long = 'Nguyễn, Siobhán; Łukasz \\ Xochitl – Okonkwo '.repeat(2).trim();
    const venue = await director.make('/api/venues', { name: long, isOurs: true, address: '12 Third Street\nTamarack Ridge' });
    await director.patch(`/api/games/${season.games[0]!.gameId}`, { venueId: venue.id }, { version: (await director.look(`/api/games/${season.games[0]!.gameId}`)).version });
    const text = await feed.text();
    expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true);
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    const octets = text.split('\r\n').map((line) => Buffer.byteLength(line));
    expect(Math.max(...octets)).toBeLessThanOrEqual(75);
    expect(Math.max(...octets)).toBeGreaterThan(65);
    expect(text).not.toContain('\uFFFD');
    expect((await feed.events()).map((event) => event.location)).toContain(`${long}, 12 Third Street, Tamarack Ridge`);
  });

  test('is the same bytes while nothing changes, and none at all for who has them', async () => {
    const { feed, director, season } = await aPlace();
    const [first, second] = [await feed.fetchIt(), await feed.fetchIt()];
    const tag = first.headers.get('etag')!;
    expect([first.headers.get('content-type'), first.headers.get('cache-control')]).toEqual(['text/calendar; charset=utf-8', 'private, no-cache']);
    expect(await first.text()).toBe(await second.text());
    for (const sent of [tag, `W/${tag}`, `"other", ${tag}`, '*']) {
      const again = await feed.fetchIt({ 'if-none-match': sent });
      expect([sent, again.status, await again.text(), again.headers.get('etag')]).toEqual([sent, 304, '', tag]);
    }
    await director.make(`/api/games/${season.games[0]!.gameId}/postpone`, { reason: 'Snow' });
    const after = await feed.fetchIt({ 'if-none-match': tag });
    expect([after.status, after.headers.get('etag') === tag]).toEqual([200, false]);
  });
});

describe('a game that moves', () => {
  test('is CANCELLED with its old hour when it is postponed, one higher, and CONFIRMED under the same uid on its new day, higher again', async () => {
    const { director, gameId, game } = await aPlace();
    const before = await game();
    await director.make(`/api/games/${gameId}/postpone`, { reason: 'Snow' });
    const waiting = await game();
    expect(waiting).toMatchObject({ status: 'CANCELLED', sequence: before.sequence + 1, start: before.start, end: before.end, summary: 'Postponed: Herons at Kestrels, varsity basketball' });
    expect(waiting.description).not.toContain('Snow');
    await director.make(`/api/games/${gameId}/postpone`, { reason: 'Snow', to: '2026-12-09', clock: '18:30' });
    const moved = await game();
    expect(moved).toMatchObject({ status: 'CONFIRMED', start: '2026-12-10T01:30:00.000Z', end: '2026-12-10T03:00:00.000Z' });
    expect(moved.sequence).toBeGreaterThan(waiting.sequence);
    expect(moved.changedAt >= waiting.changedAt && waiting.changedAt > '2026-11').toBe(true);
    await director.make(`/api/games/${gameId}/cancel`, { reason: 'No gym' });
    expect(await game()).toMatchObject({ status: 'CANCELLED', start: moved.start, sequence: moved.sequence + 1, summary: 'Cancelled: Herons at Kestrels, varsity basketball' });
  });

  test('rises with its hour and with its place, the whole night’s or its own, and neither with a score nor with the sign-off', async () => {
    const { director, season, gameId, game, version } = await aPlace();
    const { nightId } = season.games[0]!;
    const other = await director.make('/api/venues', { name: 'Ridge Gymnasium', isOurs: true, floors: [] });
    const sequences = [(await game()).sequence];
    const note = async () => sequences.push((await game()).sequence);
    await director.patch(`/api/games/${gameId}`, { startsAtClock: '19:30' }, { version: await version() });
    await note();
    const night = await director.look(`/api/nights/${nightId}`);
    await director.patch(`/api/nights/${nightId}`, { venueId: other.id }, { version: night.version });
    await note();
    const secondGame = await director.make('/api/games', { seasonId: season.seasonId, level: 'juniorVarsity', homeTeamId: season.teamId, visitorTeamIds: [season.opponentTeamId], playedOn: season.games[0]!.playedOn, startsAtClock: '17:30', venueId: other.id });
    expect(secondGame.nightIds).toEqual([nightId]);
    await director.patch(`/api/games/${gameId}`, { venueId: season.venueId, floorId: season.floorId }, { version: await version() });
    await note();
    expect((await game()).location).toBe('Alder Fieldhouse (the Perch)');
    expect(sequences.every((one, place) => place === 0 || one > sequences[place - 1]!)).toBe(true);
    const settled = await game();
    const { nightIds } = await director.look(`/api/games/${gameId}`);
    await director.make(`/api/games/${gameId}/start`);
    expect(await game()).toEqual(settled);
    await director.make(`/api/nights/${nightIds[0]}/sign-off`, EARLY);
    expect(await game()).toEqual(settled);
    await director.patch(`/api/games/${gameId}`, { scores: [{ teamId: season.teamId, score: 51 }, { teamId: season.opponentTeamId, score: 48 }] }, { version: await version() });
    expect(await game()).toEqual(settled);
  });

  test('takes along the one that starts after it, whose sequence never falls, not even when it gets an hour of its own', async () => {
    const { director, season, feed, gameId, version } = await aPlace();
    const after = await director.make('/api/games', { seasonId: season.seasonId, level: 'varsity', homeTeamId: season.teamId, visitorTeamIds: [season.opponentTeamId], playedOn: season.games[0]!.playedOn, startsAfterGameId: gameId, startsAfterMinutes: 20, venueId: season.venueId, floorId: season.floorId });
    const event = async () => (await feed.events()).find((one) => one.uid === `game-${after.id}@rafterline`)!;
    const first = await event();
    expect(first).toMatchObject({ sequence: 0, start: '2026-12-05T03:50:00.000Z', description: expect.stringContaining('about 8:50 PM') });
    for (const startsAtClock of ['18:00', '18:15', '18:30']) await director.patch(`/api/games/${gameId}`, { startsAtClock }, { version: await version() });
    const second = await event();
    expect(second).toMatchObject({ sequence: 3, start: '2026-12-05T03:20:00.000Z' });
    await director.patch(`/api/games/${after.id}`, { startsAtClock: '21:00', startsAfterGameId: null, startsAfterMinutes: null }, { version: (await director.look(`/api/games/${after.id}`)).version });
    expect(await event()).toMatchObject({ sequence: 4, start: '2026-12-05T04:00:00.000Z' });
    await director.patch(`/api/games/${after.id}`, { startsAtClock: null, startsAfterGameId: gameId, startsAfterMinutes: 15 }, { version: (await director.look(`/api/games/${after.id}`)).version });
    const floating = (await event()).sequence;
    expect(floating).toBeGreaterThan(4);
    const open = await director.make('/api/games', { seasonId: season.seasonId, level: 'freshman', announced: false, homeTeamId: season.teamId, visitorTeamIds: [season.opponentTeamId], playedOn: '2026-12-09' });
    expect((await feed.events()).find(({ uid }) => uid.includes(open.id))).toMatchObject({ status: 'TENTATIVE', isAllDay: true, start: '2026-12-09', end: '2026-12-10', location: null, description: expect.stringContaining('The hour is not set yet.') });
  });

  test('has both sittings when it was broken off, each with its hour', async () => {
    const { director, feed, gameId } = await aPlace();
    await director.make(`/api/games/${gameId}/start`);
    const before = (await feed.events())[0]!.sequence;
    await director.make(`/api/games/${gameId}/suspend`, { reason: 'Lightning' });
    expect((await feed.events())[0]).toMatchObject({ status: 'CONFIRMED', sequence: before + 1, description: expect.stringContaining('When it goes on is not set yet.') });
    await director.make(`/api/games/${gameId}/resume`, { day: '2026-12-05', clock: '11:00' });
    const sittings = (await feed.events()).filter((event) => event.uid.includes(gameId));
    expect(sittings.map(({ uid, status, start }) => [uid, status, start])).toEqual([
      [`game-${gameId}@rafterline`, 'CONFIRMED', '2026-12-05T02:00:00.000Z'],
      [`game-${gameId}-2@rafterline`, 'CONFIRMED', '2026-12-05T18:00:00.000Z'],
    ]);
  });

  test('keeps 7:00 PM on the wall on both sides of the change of the clocks, and is gone from the feed a year after its season', async () => {
    const { director, season, feed } = await aPlace();
    const summer = await director.make('/api/seasons', { name: 'Clocks', sport: 'basketball', startsOn: '2026-03-01', endsOn: '2026-11-10' });
    const over = await director.make('/api/seasons', { name: 'Over', sport: 'basketball', startsOn: '2024-03-01', endsOn: '2024-11-10' });
    const teamsOf = async (seasonId: string) => [
      await director.make('/api/teams', { seasonId, schoolId: season.schoolId, name: 'Varsity boys', level: 'varsity' }), await director.make('/api/teams', { seasonId, schoolId: season.opponentId, name: 'Varsity boys', level: 'varsity' }),
    ];
    const play = async (seasonId: string, playedOn: string, [home, visitor]: { id: string }[]) =>
      (await director.make('/api/games', { seasonId, level: 'varsity', homeTeamId: home!.id, visitorTeamIds: [visitor!.id], playedOn, startsAtClock: '19:00' })).id as string;
    const teams = await teamsOf(summer.id);
    const starts: Record<string, string> = {};
    for (const day of ['2026-03-07', '2026-03-08', '2026-10-31', '2026-11-01']) starts[`game-${await play(summer.id, day, teams)}@rafterline`] = day;
    const gone = await play(over.id, '2024-04-01', await teamsOf(over.id));
    const events = await feed.events();
    expect(events.filter(({ uid }) => uid in starts).map(({ uid, start }) => [starts[uid], start])).toEqual([
      ['2026-03-07', '2026-03-08T02:00:00.000Z'], ['2026-03-08', '2026-03-09T01:00:00.000Z'], ['2026-10-31', '2026-11-01T01:00:00.000Z'], ['2026-11-01', '2026-11-02T02:00:00.000Z'],
    ]);
    expect(events.some(({ uid }) => uid.includes(gone))).toBe(false);
  });
});

async function peopled(director: Visitor, season: Season, announcer: Visitor) {
  const { nightId } = season.games[0]!;
  const night = await director.look(`/api/nights/${nightId}`);
  const people = [
    { role: 'announcer', name: 'Siobhán Nguyễn', personId: announcer.personId, arrivesAt: '2026-12-05T00:45:00.000Z', note: 'Brings Xochitl' },
    { role: 'singer', name: 'Luka Wren', arrivesAt: '2026-12-05T01:30:00.000Z' },
    { role: 'honouree', name: 'Maren Pike' }, { role: 'spotter', name: 'Tobin Hale', personId: announcer.personId }, { role: 'clock', name: 'Ansel Roe' },
  ];
  const put = await director.put(`/api/nights/${nightId}/people`, { people }, { version: night.version });
  if (put.status !== 200) throw new Error(JSON.stringify(put.body));
  await director.patch(`/api/nights/${nightId}`, { doorsAt: '2026-12-05T01:15:00.000Z', note: 'Łukasz is hurt', title: 'Senior night of Xochitl' }, { version: put.body.version });
}

describe('a calendar of nights', () => {
  test('tells who is needed and when, doors and packet, and no student’s name; that of games tells none of it', async () => {
    const { department, director, season, feed } = await aPlace();
    await peopled(director, season, department.announcer);
    const nights = await aFeed(department, 'nights');
    const event = async () => (await nights.events()).find(({ uid }) => uid.includes(season.games[0]!.gameId))!;
    expect((await event()).description.split('\n').slice(1)).toEqual(['Doors: 6:15 PM', 'Packet: not issued yet', 'Announcer: Siobhán Nguyễn, arrives 5:45 PM', 'Singer, arrives 6:30 PM', 'Clock', 'Honoree', 'Spotter']);
    await director.make(`/api/nights/${season.games[0]!.nightId}/packet-issues`);
    expect((await event()).description).toContain('Packet: issue 1');
    const unfolded = (text: string) => text.replaceAll('\r\n ', '');
    const [secret, open] = [unfolded(await nights.text()), unfolded(await feed.text())];
    for (const student of ['Luka', 'Wren', 'Maren', 'Tobin', 'Ansel Roe', 'Łukasz', 'Xochitl', 'Marlowe']) {
      expect([student, secret.includes(student), open.includes(student)]).toEqual([student, false, false]);
    }
    for (const inner of ['Siobhán', 'Doors', 'Packet', 'Announcer']) expect([inner, open.includes(inner)]).toEqual([inner, false]);
    expect((await nights.events()).find(({ uid }) => uid.includes(season.games[1]!.gameId))!.description).toContain('Nobody is named for this night yet.');
  });
});

describe('the link of a calendar', () => {
  test('is shown once, opens its own calendar alone, and nothing once it is revoked', async () => {
    const { department, director, feed } = await aPlace();
    const { data } = await director.look('/api/calendar-feeds');
    expect(data).toMatchObject([{ id: feed.id, calendar: 'games', label: 'The families', state: 'open', expiresAt: '2028-03-13T06:00:00.000Z' }]);
    const token = feed.path.split('/').at(-2)!;
    expect(JSON.stringify(data)).not.toContain(token);
    expect((await department.ask('select token_hash from link where department_id = $1', [department.id])).some((row) => JSON.stringify(row).includes(token))).toBe(false);
    const statusAt = async (path: string) => (await fetch(director.baseUrl + path)).status;
    expect(await statusAt(feed.path.replace('games.ics', 'nights.ics'))).toBe(404);
    expect(await statusAt(`/api/calendars/${'x'.repeat(43)}/games.ics`)).toBe(404);
    await director.make(`/api/calendar-feeds/${feed.id}/revoke`);
    const [revoked, none] = [await fetch(director.baseUrl + feed.path), await fetch(`${director.baseUrl}/api/calendars/${'y'.repeat(43)}/games.ics`)];
    const [one, other] = [await revoked.json(), await none.json()];
    expect([revoked.status, { ...one, instance: '' }]).toEqual([none.status, { ...other, instance: '' }]);
    expect((await director.post(`/api/calendar-feeds/${feed.id}/revoke`)).body.code).toBe('link-already-revoked');
    expect((await director.look('/api/calendar-feeds')).data[0].state).toBe('revoked');
  });

  test('is the director’s to give, and of another department’s calendars nothing shows', async () => {
    const { department, feed } = await aPlace();
    const next = await aDepartment();
    for (const who of [department.announcer, department.bookkeeper]) {
      expect((await who.get('/api/calendar-feeds')).body.code).toBe('role-missing');
      expect((await who.post('/api/calendar-feeds', { calendar: 'games', label: 'x' })).body.code).toBe('role-missing');
    }
    expect((await next.director.look('/api/calendar-feeds')).data).toEqual([]);
    expect((await next.director.post(`/api/calendar-feeds/${feed.id}/revoke`)).status).toBe(404);
    expect((await (await aFeed(next)).events())).toEqual([]);
    expect((await department.director.post('/api/calendar-feeds', { calendar: 'gyms', label: 'x' })).status).toBe(400);
    expect((await department.director.post('/api/calendar-feeds', { calendar: 'games', label: '' })).status).toBe(400);
  });
});
