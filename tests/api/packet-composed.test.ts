import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { aSeason, aSignedContract } from '../support/season.ts';
import type { Season } from '../support/season.ts';

const codes = (packet: any): string[] => packet.readiness.map((line: any) => line.code);
const lineOf = (packet: any, code: string): any => packet.readiness.find((line: any) => line.code === code);
const cueOf = (packet: any, moment: string): any => packet.cues.find((cue: any) => cue.moment === moment);

async function aNight(gameCount = 1) {
  const department = await aDepartment();
  const season = await aSeason(department, gameCount);
  const { gameId, nightId } = season.games[0]!;
  const packet = () => department.director.look(`/api/nights/${nightId}/packet`);
  const night = () => department.director.look(`/api/nights/${nightId}`);
  const people = async (list: object[]) => department.director.put(`/api/nights/${nightId}/people`, { people: list }, { version: (await night()).version });
  return { department, director: department.director, season, gameId, nightId, packet, night, people };
}

const anotherGame = (season: Season, more: object) => ({
  seasonId: season.seasonId, level: 'juniorVarsity', homeTeamId: season.teamId, visitorTeamIds: [season.opponentTeamId], playedOn: season.games[0]!.playedOn, venueId: season.venueId, ...more,
});

test('three games of one night are one packet: one welcome, one anthem, codes by game, a start that floats without a clock', async () => {
  const { director, season, gameId, packet } = await aNight();
  const first = await director.make('/api/games', anotherGame(season, { startsAtClock: '16:00' }));
  const second = await director.make('/api/games', anotherGame(season, { level: 'sophomore', startsAfterGameId: first.id, startsAfterMinutes: 20 }));
  const composed = await packet();
  expect(composed.games.map((game: any) => game.gameId)).toEqual([first.id, second.id, gameId]);
  expect([composed.cues.filter((cue: any) => cue.moment === 'welcome').length, composed.cues.filter((cue: any) => cue.moment === 'anthem').map((cue: any) => cue.gameId)]).toEqual([1, [gameId, gameId]]);
  const lineUps = composed.cues.filter((cue: any) => cue.moment === 'lineUpVisitors');
  expect(lineUps.map((cue: any) => cue.startsText)).toEqual(['3:52 PM', null, expect.stringMatching(/^6:\d\d PM$/)]);
  expect(lineUps.map((cue: any) => cue.code)).toEqual([/^P\d$/, /^2-P\d$/, /^3-P\d$/].map((code) => expect.stringMatching(code)));
  expect(new Set(composed.cues.map((cue: any) => cue.code)).size).toBe(composed.cues.length);
  expect(composed.windows.filter((window: any) => window.windowKey === 'pregame').map((window: any) => window.capacitySeconds)).toEqual([1380, 1080, null]);
});

test('no roster, no sponsor, sixty players and a name of forty letters make a packet that says so', async () => {
  const { director, season, packet } = await aNight();
  expect(codes(await packet())).toEqual(expect.arrayContaining(['no-roster', 'no-sponsor-reads', 'nobody-announcing']));
  const name = 'Maximiliana Featherstonehaugh-Nguyễn-Lee';
  const players = Array.from({ length: 60 }, (_, place) => ({ number: String(place), name: place === 0 ? name : `Britta Sandoval ${place}`, isStarter: place < 5 }));
  const team = await director.look(`/api/teams/${season.opponentTeamId}`);
  expect((await director.put(`/api/teams/${season.opponentTeamId}/roster`, { players }, { version: team.version })).status).toBe(200);
  const full = await packet();
  expect(codes(full)).not.toContain('no-roster');
  expect([full.games[0].visitors.rows.length, JSON.stringify(cueOf(full, 'lineUpVisitors')).includes(name)]).toEqual([60, true]);
  expect(lineOf(full, 'number-illegal')).toMatchObject({ resource: 'teams', id: season.opponentTeamId });
});

test('the night’s own anthem, flag and halftime go before what the department usually does', async () => {
  const { director, nightId, packet, night } = await aNight();
  expect(cueOf(await packet(), 'anthem').title).toMatch(/played/i);
  const change = async (form: object) => director.patch(`/api/nights/${nightId}`, form, { version: (await night()).version });
  expect((await change({ anthemForm: 'sung', flagForm: 'colourGuard', halftimeSeconds: 720 })).body).toMatchObject({ anthemForm: 'sung', flagForm: 'colourGuard', halftimeSeconds: 720 });
  const composed = await packet();
  expect(cueOf(composed, 'anthem').whoText).toBe('Color guard: nobody is named yet. Singer: nobody is named yet');
  expect(codes(composed)).toEqual(expect.arrayContaining(['no-singer', 'no-colour-guard', 'halftime-long']));
  expect(cueOf(composed, 'welcome').caution).toContain('tell the visitors before the start');
  for (const form of [{ anthemForm: 'whistled' }, { flagForm: 'half' }, { halftimeSeconds: 59 }, { halftimeSeconds: 3601 }]) expect([form, (await change(form)).status]).toEqual([form, 400]);
  expect((await change({ anthemForm: null, flagForm: null, halftimeSeconds: null })).body).toMatchObject({ anthemForm: null, halftimeSeconds: null });
  expect(codes(await packet())).not.toContain('halftime-long');
});

test('an announcer picked from the department reads at their own measured pace; a stranger cannot be picked', async () => {
  const { department, people, packet } = await aNight();
  const [other, stranger] = [await aDepartment(), '01900000-0000-7000-8000-000000000001'];
  const { person } = await department.announcer.look('/api/me');
  const announcer = { role: 'announcer', name: 'Casimir Thornquist', personId: person.id };
  expect((await people([announcer])).body.people).toMatchObject([{ personId: person.id, role: 'announcer' }]);
  const secondsOfWelcome = async () => cueOf(await packet(), 'welcome').seconds;
  const usual = await secondsOfWelcome();
  await department.ask('update membership set words_per_minute = 70 where department_id = $1 and person_id = $2', [department.id, person.id]);
  expect(await secondsOfWelcome()).toBeGreaterThan(usual * 1.5);
  expect(codes(await packet())).not.toContain('nobody-announcing');
  for (const personId of [stranger, (await other.director.look('/api/me')).person.id]) {
    expect((await people([{ ...announcer, personId }])).body.code).toBe('unknown-person');
  }
});

test('copy changed since its approval, a sponsor whose category is blocked afterwards and a game moved since the issue are found', async () => {
  const { department, director, season, gameId, nightId, packet } = await aNight();
  const contract = await aSignedContract(department, season);
  await director.make('/api/placements', { commitmentId: contract.commitments[0].id, gameId, windowKey: 'pregame' });
  const copy = await director.make('/api/copies', { sponsorId: season.sponsorId, readKindId: season.readKinds.gameBall, title: 'Game ball', fallbackText: 'We thank Juniper & Pike Hardware.', text: 'Juniper & Pike Hardware, at 40 Alder Street.' });
  const [version] = (await director.look(`/api/copies/${copy.id}`)).versions;
  await director.make(`/api/copies/${copy.id}/versions/${version.id}/approve`, { approvedByName: 'Hazel Juniper', approvedOn: '2026-11-21', note: 'by phone' });
  expect(codes(await packet()).filter((code) => code.startsWith('copy-') || code === 'category-blocked')).toEqual([]);
  await director.make(`/api/copies/${copy.id}/versions`, { text: 'Juniper & Pike Hardware, at 41 Alder Street.' });
  const category = await director.look(`/api/sponsor-categories/${season.categoryId}`);
  await director.patch(`/api/sponsor-categories/${season.categoryId}`, { isBlocked: true }, { version: category.version });
  const before = await packet();
  expect(lineOf(before, 'copy-changed')).toMatchObject({ grade: 'worthKnowing', resource: 'copies', id: copy.id });
  expect(lineOf(before, 'category-blocked')).toMatchObject({ grade: 'mustFix', resource: 'contracts', id: contract.id });
  expect(JSON.stringify(before.cues)).toContain('40 Alder Street');

  await director.make(`/api/nights/${nightId}/packet-issues`);
  expect(codes(await packet())).not.toContain('game-moved');
  const game = await director.look(`/api/games/${gameId}`);
  expect((await director.patch(`/api/games/${gameId}`, { startsAtClock: '19:30' }, { version: game.version })).status).toBe(200);
  expect(lineOf(await packet(), 'game-moved')).toMatchObject({ grade: 'mustFix', resource: 'nights', id: nightId, tab: 'packet', gameId });
  await director.make(`/api/nights/${nightId}/packet-issues`);
  expect(codes(await packet())).not.toContain('game-moved');
});

test('the announcer sees the same packet, and may not change the night', async () => {
  const { department, nightId, packet, night } = await aNight();
  const own = await department.announcer.look(`/api/nights/${nightId}/packet`);
  expect(own.cues).toEqual((await packet()).cues);
  expect((await department.announcer.patch(`/api/nights/${nightId}`, { anthemForm: 'sung' }, { version: (await night()).version })).status).toBe(403);
});
