import { expect, test } from 'vitest';
import { friday, saturday, tuesday } from '../support/calendar.ts';
import { aDepartment } from '../support/department.ts';
import { aSeason, aSignedContract } from '../support/season.ts';

test('junior varsity at 5:30 and varsity 20 minutes after it are one night', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 0);
  const day = friday('2026-12-04');
  const team = (schoolId: string) => director.make('/api/teams', { seasonId: season.seasonId, schoolId, name: 'JV', level: 'juniorVarsity' });
  const [ours, theirs] = [await team(season.schoolId), await team(season.opponentId)];
  const early = await director.make('/api/games', { seasonId: season.seasonId, level: 'juniorVarsity', homeTeamId: ours.id, visitorTeamIds: [theirs.id], playedOn: day, startsAtClock: '17:30', venueId: season.venueId });
  const late = await director.make('/api/games', { seasonId: season.seasonId, level: 'varsity', homeTeamId: season.teamId, visitorTeamIds: [season.opponentTeamId], playedOn: day, startsAfterGameId: early.id, startsAfterMinutes: 20, venueId: season.venueId, floorId: season.floorId });
  expect([early.label, early.startsAtShown, late.nightId]).toEqual(['Herons at Kestrels', '5:30 PM', early.nightId]);
  expect(late.startsAtShown).toBe('20 minutes after the game before, about 7:05 PM');
  const night = await director.look(`/api/nights/${late.nightId}`);
  expect([night.games.map((game: { id: string }) => game.id), night.floorName, night.state]).toEqual([[early.id, late.id], 'the Perch', 'open']);
});

test.each([
  ['postpone', 'planned', { reason: 'Snow' }, 200],
  ['postpone', 'underWay', { reason: 'Snow' }, 'game-cannot-be-postponed'],
  ['cancel', 'planned', { reason: 'Ice' }, 200],
  ['cancel', 'underWay', { reason: 'Ice' }, 'game-cannot-be-cancelled'],
  ['suspend', 'underWay', {}, 200],
  ['suspend', 'planned', {}, 'game-not-under-way'],
  ['play', 'underWay', { scores: [] }, 200],
  ['play', 'cancelled', { scores: [] }, 'game-cannot-finish'],
  ['start', 'planned', {}, 200],
  ['start', 'underWay', {}, 'game-cannot-start'],
])('to %s a game that is %s', async (command, status, body, outcome) => {
  const department = await aDepartment();
  const { director } = department;
  const [game] = (await aSeason(department, 1)).games;
  if (status === 'underWay') await director.make(`/api/games/${game!.gameId}/start`);
  if (status === 'cancelled') await director.make(`/api/games/${game!.gameId}/cancel`, { reason: 'Ice' });
  const answer = await director.post(`/api/games/${game!.gameId}/${command}`, body);
  expect(answer.body.code ?? answer.status).toBe(outcome);
});

test('a postponed game keeps its reads and its night moves with it; a cancelled one is credited', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 2);
  const perGame = [{ readKindId: season.readKinds.concession, counting: 'perGame', reads: 2, rateCents: 4000 }];
  const contract = await aSignedContract(department, season, { commitments: perGame, priceCents: 40_000 });
  const standing = async () => (await director.look(`/api/contracts/${contract.id}`)).standing;
  expect((await standing()).owed).toBe(4);
  const [first] = season.games;
  const moved = await director.make(`/api/games/${first!.gameId}/postpone`, { reason: 'Snow', to: tuesday('2026-12-08') });
  expect([moved.status, moved.movedFromOn, moved.nightId, (await director.look(`/api/nights/${first!.nightId}`)).heldOn]).toEqual(['planned', '2026-12-04', first!.nightId, '2026-12-08']);
  expect(await standing()).toMatchObject({ promised: 4, owed: 4, credited: 0 });
  const added = await director.make('/api/games', { seasonId: season.seasonId, level: 'varsity', homeTeamId: season.teamId, visitorTeamIds: [season.opponentTeamId], playedOn: saturday('2026-12-19'), startsAtClock: '19:00', venueId: season.venueId });
  expect(await standing()).toMatchObject({ promised: 6, owed: 6 });
  await director.make(`/api/games/${added.id}/cancel`, { reason: 'Ice' });
  expect(await standing()).toMatchObject({ owed: 4, credited: 2 });
  expect((await director.post(`/api/games/${added.id}/cancel`, { reason: 'Ice' })).body.code).toBe('game-cannot-be-cancelled');
});

test('a cancelled game that was billed already is credited by memo, and the books hold', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 2);
  const perGame = [{ readKindId: season.readKinds.concession, counting: 'perGame', reads: 2, rateCents: 4000 }];
  const contract = await aSignedContract(department, season, { commitments: perGame, priceCents: 40_000, billingPlan: { kind: 'inFull', on: '2026-11-20' } });
  const invoice = await director.make('/api/invoices', { contractId: contract.id, throughDay: '2026-12-01', issuedOn: '2026-12-01' });
  await director.make(`/api/games/${season.games[1]!.gameId}/cancel`, { reason: 'Ice' });
  expect((await director.look(`/api/contracts/${contract.id}`)).standing).toMatchObject({ owed: 2, credited: 2, billedCents: 20_000, receivableCents: 21_000 });
  const [listed] = (await director.look('/api/credit-memos')).data;
  const memo = await director.look(`/api/credit-memos/${listed.id}`);
  expect(memo).toMatchObject({ netCents: 20_000, taxCents: 1_000, grossCents: 21_000, appliedCents: 21_000, unappliedCents: 0, contractId: contract.id, reason: 'A game was cancelled; its reads are credited.' });
  expect(memo.number).toMatch(/^TR-CM-20\d\d-0001$/);
  expect(memo.lines).toMatchObject([{ description: 'Concession read, credited', quantity: 2, unitCents: 10_000, amountCents: 20_000, taxCents: 1_000, invoiceNumber: invoice.number }]);
  expect(memo.applications).toMatchObject([{ invoiceId: invoice.id, amountCents: 21_000, takenBack: false }]);
  expect((await director.post(`/api/applications/${memo.applications[0].id}/take-back`)).body).toMatchObject({ id: memo.id, unappliedCents: 21_000 });
  expect((await director.make(`/api/credit-memos/${memo.id}/applications`, { invoiceId: invoice.id, amountCents: 5_000 })).unappliedCents).toBe(16_000);
  expect((await director.post(`/api/credit-memos/${memo.id}/applications`, { invoiceId: invoice.id, amountCents: 16_001 })).body.code).toBe('more-than-unapplied');
  const { lines } = await director.look(`/api/contracts/${contract.id}/account-statement`);
  expect(lines.filter((line: any) => line.cause?.kind === 'creditMemo')[0]).toMatchObject({ sentence: `$50.00 of credit memo ${memo.number} was applied to invoice ${invoice.number}.`, cause: { kind: 'creditMemo', label: `Credit memo ${memo.number}` } });
  expect((await director.bytes(`/api/credit-memos/${memo.id}/credit-memo.pdf`)).bytes.subarray(0, 5).toString()).toBe('%PDF-');
});

test('what belongs to another department is not found, and what the form names in vain is refused', async () => {
  const [one, other] = [await aDepartment(), await aDepartment()];
  const season = await aSeason(one, 1);
  const [game] = season.games;
  for (const path of [`/api/games/${game!.gameId}`, `/api/nights/${game!.nightId}`, `/api/teams/${season.teamId}`, `/api/venues/${season.venueId}`, `/api/seasons/${season.seasonId}`, `/api/players/${season.playerIds[0]}`]) {
    expect([(await other.director.get(path)).status, (await one.director.get(path)).status]).toEqual([404, 200]);
  }
  expect((await other.director.post(`/api/games/${game!.gameId}/cancel`, { reason: 'Ice' })).status).toBe(404);
  expect((await other.director.post('/api/teams', { seasonId: season.seasonId, schoolId: season.schoolId, name: 'V', level: 'varsity' })).status).toBe(422);
  expect((await one.announcer.post(`/api/games/${game!.gameId}/cancel`, { reason: 'Ice' })).status).toBe(403);
});

test('planned reads go with a game that moves and are gone with one that is cancelled; a signed-off night moves no more', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 2);
  const contract = await aSignedContract(department, season);
  const [first, second] = season.games;
  const commitmentId = contract.commitments[1].id;
  for (const game of season.games) await director.make('/api/placements', { commitmentId, gameId: game.gameId, windowKey: 'halftime' });
  const placed = async (nightId: string) => (await director.look(`/api/nights/${nightId}`)).placementCount;
  const moved = await director.make(`/api/games/${first!.gameId}/postpone`, { reason: 'Snow', to: second!.playedOn, clock: '16:00' });
  expect([moved.nightId, await placed(second!.nightId), (await director.get(`/api/nights/${first!.nightId}`)).status]).toEqual([second!.nightId, 2, 404]);
  await director.make(`/api/games/${first!.gameId}/cancel`, { reason: 'Ice' });
  expect(await placed(second!.nightId)).toBe(1);
  await department.ask('insert into sign_off (department_id, id, night_id, signed_off_by_person_id) values ($1, $2, $3, $4)', [department.id, crypto.randomUUID(), second!.nightId, director.personId]);
  expect((await director.look(`/api/nights/${second!.nightId}`)).state).toBe('signedOff');
  for (const command of ['postpone', 'cancel', 'start']) {
    const answer = await director.post(`/api/games/${second!.gameId}/${command}`, command === 'start' ? {} : { reason: 'Late' });
    expect([command, answer.body.code]).toEqual([command, 'night-already-signed-off']);
  }
});
