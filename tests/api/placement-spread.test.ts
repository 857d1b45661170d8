import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { aSeason, aSignedContract } from '../support/season.ts';

/** Far enough ahead that these nights are always still to come. */
async function laterSeason() {
  const department = await aDepartment();
  const made = await aSeason(department, 0);
  const { director } = department;
  const season = await director.make('/api/seasons', { name: 'Basketball 2150-51', sport: 'basketball', startsOn: '2150-11-20', endsOn: '2151-03-13' });
  const [team, opponent] = await Promise.all(
    [made.schoolId, made.opponentId].map((schoolId) => director.make('/api/teams', { seasonId: season.id, schoolId, name: 'Varsity boys', level: 'varsity' })),
  );
  const games: any[] = [];
  for (const playedOn of ['2150-12-04', '2150-12-11', '2150-12-18']) {
    games.push(await director.make('/api/games', { seasonId: season.id, level: 'varsity', homeTeamId: team.id, visitorTeamIds: [opponent.id], playedOn, startsAtClock: '19:00', venueId: made.venueId }));
  }
  const contract = await aSignedContract(department, { ...made, seasonId: season.id }, { term: { startsOn: '2150-11-20', endsOn: '2151-03-13' } });
  return { department, director, seasonId: season.id, games, contract };
}

test('the reads owed are spread evenly over the nights to come, and a second spread places nothing twice', async () => {
  const { department, director, seasonId, games, contract } = await laterSeason();
  const spread = await director.make('/api/plan/spread', { seasonId });
  expect(spread).toEqual({ placed: 14, left: [] });
  expect(await director.make('/api/plan/spread', { seasonId })).toEqual({ placed: 0, left: [] });
  const perNight = await Promise.all(games.map(async (game) => (await director.look(`/api/nights/${game.nightIds[0]}/placements`)).data));
  const [ball] = contract.commitments;
  expect(perNight.map((data) => data.filter((one: any) => one.commitmentId === ball.id).length)).toEqual([2, 2, 2]);
  expect((await department.announcer.post('/api/plan/spread', { seasonId })).status).toBe(403);
});

test('a place is taken once, only in a window of the kind, and is free again when the read is taken out', async () => {
  const { director, games, contract } = await laterSeason();
  const [ball] = contract.commitments;
  const place = (more = {}) => director.post('/api/placements', { commitmentId: ball.id, gameId: games[0].id, windowKey: 'pregame', ...more });
  const first = await place();
  expect([first.status, first.body.place, first.body.isPinned]).toEqual([201, 1, true]);
  expect((await place({ place: 1 })).body.code).toBe('placement-place-taken');
  expect((await place({ windowKey: 'halftime' })).body.code).toBe('window-not-of-the-kind');
  expect((await place({ windowKey: 'overtime' })).body.code).toBe('unknown-window');
  expect((await place({ commitmentId: contract.id })).body.code).toBe('unknown-commitment');
  expect([(await place()).status, (await place()).status, (await place()).body.code]).toEqual([201, 201, 'window-full']);
  expect((await director.remove(`/api/placements/${first.body.id}`)).status).toBe(204);
  expect((await place()).body.place).toBe(1);
});

test('a contract on hold is neither planned nor printed, and its reads stay owed; once the hold is lifted all goes on', async () => {
  const { department, director, seasonId, games, contract } = await laterSeason();
  const [ball] = contract.commitments;
  const nightId = games[0].nightIds[0];
  await director.make('/api/placements', { commitmentId: ball.id, gameId: games[0].id, windowKey: 'pregame' });
  const codes = async () => (await director.look(`/api/nights/${nightId}/packet`)).readiness.map((line: any) => line.code);
  expect(await codes()).not.toContain('no-sponsor-reads');
  const reason = { reason: 'Unpaid since January', on: '2150-12-04' };
  const preview = await director.make(`/api/contracts/${contract.id}/hold/preview`, reason);
  expect(preview.cautions[0]).toBe('Nothing is posted: the 14 reads owed stay owed.');
  const held = await director.make(`/api/contracts/${contract.id}/hold`, reason);
  expect([held.hold, held.standing.owed]).toEqual([{ heldOn: '2150-12-04', reason: 'Unpaid since January' }, 14]);
  expect(await codes()).toContain('no-sponsor-reads');
  expect((await director.look('/api/home')).held).toEqual([{ contractId: contract.id, contractTitle: contract.title, sponsorName: contract.sponsorName, heldOn: '2150-12-04', reason: 'Unpaid since January', owed: 14 }]);
  const refused = await director.post('/api/placements', { commitmentId: ball.id, gameId: games[1].id, windowKey: 'pregame' });
  expect([refused.body.code, refused.body.detail]).toEqual(['contract-held', 'This contract is on hold since 2150-12-04. Lift the hold first.']);
  expect(await director.make('/api/plan/spread', { seasonId })).toEqual({ placed: 0, left: [] });
  expect((await director.post(`/api/contracts/${contract.id}/hold`, reason)).body.code).toBe('contract-already-held');
  expect((await director.post(`/api/contracts/${contract.id}/lift-hold`, { reason: 'Paid', on: '2150-12-03' })).body.code).toBe('lifted-before-held');
  const lifted = await director.make(`/api/contracts/${contract.id}/lift-hold`, { reason: 'Paid', on: '2150-12-05' });
  expect(lifted.hold).toBe(null);
  expect(await codes()).not.toContain('no-sponsor-reads');
  expect((await director.make('/api/plan/spread', { seasonId })).placed).toBe(13);
  expect((await director.post(`/api/contracts/${contract.id}/lift-hold`, { reason: 'Paid' })).body.code).toBe('contract-not-held');
  expect(await department.ask('select id from ledger_event where department_id = current_department()')).toHaveLength(1);
});

test('a contract that has ended is no longer printed from its last day on', async () => {
  const { director, games, contract } = await laterSeason();
  for (const game of games.slice(0, 2)) await director.make('/api/placements', { commitmentId: contract.commitments[0].id, gameId: game.id, windowKey: 'pregame' });
  await director.make(`/api/contracts/${contract.id}/end`, { on: '2150-12-11' });
  const codes = async (night: number) => (await director.look(`/api/nights/${games[night].nightIds[0]}/packet`)).readiness.map((line: any) => line.code);
  expect([(await codes(0)).includes('no-sponsor-reads'), (await codes(1)).includes('no-sponsor-reads')]).toEqual([false, true]);
});
