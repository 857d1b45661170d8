import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { aHalfSeason } from '../support/half-season.ts';
import { aSignedContract } from '../support/season.ts';

const EARLY = { overrideReason: 'the test does not wait for the night' };
const statesOf = (cells: Record<string, { state: string }>) => Object.fromEntries(Object.entries(cells).map(([row, { state }]) => [row, state]));

test('a department without a season is told that there is none', async () => {
  const { director } = await aDepartment();
  expect(await director.look('/api/boards/glance')).toMatchObject({ seasonId: null, nights: [], next: [], nextLeftOff: 0 });
});

test('a season without games has no nights, and nothing is open', async () => {
  const department = await aDepartment();
  const { seasonId } = await aHalfSeason(department, []);
  const view = await department.director.look(`/api/boards/glance?seasonId=${seasonId}`);
  expect(view).toMatchObject({ seasonId, seasonName: 'Basketball now', nights: [], next: [] });
  expect(Object.values(view.open)).toEqual(Array.from({ length: 8 }, () => ({ mend: 0, look: 0 })));
});

test('in half a season what is over is signed off or is to be, what is near presses, and what is far waits', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aHalfSeason(department, [-14, -7, 3, 40]);
  const [signed, open, near, far] = season.games as [any, any, any, any];
  await director.make(`/api/nights/${signed.nightId}/sign-off`, { ...EARLY, attendance: 412 });
  await aSignedContract(department, season, { commitments: [{ readKindId: season.readKinds.concession, counting: 'perGame', reads: 2, rateCents: 4000 }] });
  const view = await director.look(`/api/boards/glance?seasonId=${season.seasonId}`);
  expect(view.nights.map(({ nightId }: any) => nightId)).toEqual([signed, open, near, far].map(({ nightId }) => nightId));
  const none = { rosters: 'none', names: 'none', people: 'none', reads: 'none', copy: 'none', packet: 'none' };
  expect(view.nights.map(({ cells }: any) => statesOf(cells))).toEqual([
    { ...none, signOff: 'done', attendance: 'done' },
    { ...none, signOff: 'mend', attendance: 'none' },
    // Nobody has written how to say the coach's name.
    { rosters: 'mend', names: 'look', people: 'mend', reads: 'mend', copy: 'none', packet: 'look', signOff: 'none', attendance: 'none' },
    { rosters: 'ahead', names: 'ahead', people: 'ahead', reads: 'ahead', copy: 'none', packet: 'ahead', signOff: 'none', attendance: 'none' },
  ]);
  expect(view.nights[0].cells.attendance.words).toBe('412');
  expect(view.nights[2].cells.reads).toMatchObject({ words: '2 without a place', sentences: ['2 reads promised for this night have no place yet.'], to: `/nights/${near.nightId}/show?tab=placements` });
  expect(view.nights[2].label).toBe('Port Ansel');
  expect(view.open).toMatchObject({ rosters: { mend: 1, look: 0 }, people: { mend: 1, look: 0 }, reads: { mend: 1, look: 0 }, signOff: { mend: 1, look: 0 }, packet: { mend: 0, look: 1 } });
  expect(view.next.map(({ row, state }: any) => `${row} ${state}`)).toEqual(['signOff mend', 'rosters mend', 'people mend', 'reads mend', 'names look', 'packet look']);
  expect(view.next[0]).toMatchObject({ nightId: open.nightId, to: `/nights/${open.nightId}/show?tab=tidy` });
});

test('a night mended is seen at the next look: people named, a packet issued, and out of date once its game is moved', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aHalfSeason(department, [5]);
  const { nightId } = season.games[0]!;
  const night = await director.look(`/api/nights/${nightId}`);
  await director.put(`/api/nights/${nightId}/people`, { people: [{ role: 'announcer', name: 'Odell Marsh' }, { role: 'spotter', name: 'Perpetua Lind' }] }, { version: night.version });
  const cells = async () => (await director.look(`/api/boards/glance?seasonId=${season.seasonId}`)).nights[0].cells;
  expect((await cells()).people).toEqual({ state: 'done', words: 'Named', sentences: [], to: null });
  await director.make(`/api/nights/${nightId}/packet-issues`);
  expect((await cells()).packet).toMatchObject({ state: 'done', words: 'Packet 1' });
  const after = await director.look(`/api/nights/${nightId}`);
  await director.put(`/api/nights/${nightId}/people`, { people: [{ role: 'announcer', name: 'Wren Halloran' }] }, { version: after.version });
  expect((await cells()).packet).toMatchObject({ state: 'mend', words: 'Out of date' });
});

test('the file says the same in words and names no student, and the bookkeeper is not asked to prepare nights', async () => {
  const department = await aDepartment();
  const { director, bookkeeper, announcer } = department;
  const season = await aHalfSeason(department, [3]);
  const team = await director.look(`/api/teams/${season.teamId}`);
  await director.put(`/api/teams/${season.teamId}/roster`, { players: [{ number: '4', name: 'Xqzotl Vrnk', isStarter: true }] }, { version: team.version });
  expect((await announcer.look(`/api/boards/glance?seasonId=${season.seasonId}`)).nights[0].cells.names).toMatchObject({ state: 'look', words: 'How is it said?' });
  const csv = (await director.bytes(`/api/boards/glance?as=csv&seasonId=${season.seasonId}`)).bytes.toString('utf8');
  expect(csv).toContain('How is it said?');
  expect(csv).not.toContain('Xqzotl');
  expect((await bookkeeper.get('/api/boards/glance')).status).toBe(403);
  expect((await bookkeeper.get('/api/boards/glance?as=csv')).status).toBe(403);
});

test('a game of another sport on the same night asks for no read of a contract of this season', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aHalfSeason(department, [3]);
  const [game] = season.games;
  const other = await director.make('/api/seasons', { name: 'Wrestling now', sport: 'wrestling', startsOn: season.startsOn, endsOn: season.endsOn });
  const team = await director.make('/api/teams', { seasonId: other.id, schoolId: season.schoolId, name: 'Varsity', level: 'varsity' });
  const opponent = await director.make('/api/teams', { seasonId: other.id, schoolId: season.opponentId, name: 'Varsity', level: 'varsity' });
  const meet = await director.make('/api/games', { seasonId: other.id, level: 'varsity', homeTeamId: team.id, visitorTeamIds: [opponent.id], playedOn: game!.playedOn, startsAtClock: '17:00', venueId: season.venueId, floorId: season.floorId });
  expect(meet.nightIds).toEqual([game!.nightId]);
  await aSignedContract(department, season, { commitments: [{ readKindId: season.readKinds.concession, counting: 'perGame', reads: 2, rateCents: 4000 }] });
  const { nights } = await director.look(`/api/boards/glance?seasonId=${season.seasonId}`);
  expect(nights[0].cells.reads.words).toBe('2 without a place');
});
